import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import { type compute, leastTonPerAc } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
export type All = ValuesOf<typeof inputs> & Results;
export const hasLikely = ({ likelyTonPerAc }: All): boolean => likelyTonPerAc >= leastTonPerAc;
export const hasLow = ({ lowTonPerAc }: All): boolean => lowTonPerAc >= leastTonPerAc;
export const inTime = ({ timing }: All): boolean => timing === 'in-time';
const volesky = 'volesky-g2012, water-use efficiency of forages';
const yieldWays = (water: string) => [{ formula: tex`\min(\frac{\q{${water}}}{\q{waterPerTonIn}}, \q{mostTonPerAc})` }] as const;
const made = tex`\frac{\q{madePercent}}{100}`;
const costWays = (tons: string) =>
  [
    {
      formula: tex`\frac{\q{acreCostUsd} + \q{cutUsdPerTon} \times \q{${tons}} \times ${made}}{\q{${tons}} \times ${made} \times \frac{\q{eatenPercent}}{100}}`,
    },
  ] as const;

export const steps: Working<All, Results> = [
  lookup('leftDays', { says: 'Days between the sowing and the frost.', source: 'common practice' }),
  lookup('timing', {
    says: 'It must be used before the frost, and a warm-season crop must not be sown in cold soil.',
    source: 'uga-planting-warm-annuals, soil temperature',
  }),
  lookup('heldPerFtIn', {
    says: 'What a foot of such soil holds for plants when full: the middle of the list.',
    onlyWhen: ({ storedFrom }) => storedFrom === 'feel',
    source: 'ucdavis-drought-awc, available water by texture',
  }),
  byCase('storedNowIn', {
    says: 'What is in it now, as deep as roots will go.',
    source: 'allen-1998, eq. 82',
    ways: [
      { when: ({ storedFrom }) => storedFrom === 'known', formula: tex`\q{knownStoredIn}` },
      { formula: tex`\frac{\q{rootDepthIn}}{12} \times \q{heldPerFtIn} \times \frac{\q{filledPercent}}{100}` },
    ],
  }),
  formula('likelyWaterIn', tex`\q{storedNowIn} + \frac{\q{likelyRainIn} \times \q{usedPercent}}{100}`, {
    says: 'Water for the crop: what is stored, and its share of the likely rain.',
    source: 'common practice',
  }),
  formula('lowWaterIn', tex`\q{storedNowIn} + \frac{\q{lowRainIn} \times \q{usedPercent}}{100}`, { says: 'The same in a dry year.' }),
  byCase('likelyTonPerAc', {
    says: 'Tons: the water divided by what a ton takes, but no more than the crop can make.',
    source: volesky,
    ways: yieldWays('likelyWaterIn'),
  }),
  byCase('lowTonPerAc', { says: 'Tons in a dry year.', source: volesky, ways: yieldWays('lowWaterIn') }),
  formula('acreCostUsd', tex`\q{seedUsd} + \q{sowingUsd} + \q{feedUsd} + \q{otherUsd}`, { says: 'What an acre costs, made or not.' }),
  byCase('cutUsdPerTon', {
    says: 'What a ton costs to cut and bale.',
    ways: [
      { when: ({ use }) => use === 'bale', formula: tex`\q{balingUsdPerTon}` },
      { formula: '0', because: 'stock cut it themselves' },
    ],
  }),
  formula('madePercent', tex`100 - 10 \times \q{failCount}`, { says: 'Tries that make a crop, by your judgement.' }),
  when(hasLikely, [
    byCase('sownUsdPerTon', {
      says: 'Cost of a dry ton eaten. The good tries pay for the failed ones.',
      source: 'common practice',
      ways: costWays('likelyTonPerAc'),
    }),
    formula(
      'madeUsdPerTon',
      tex`\frac{\q{acreCostUsd} + \q{cutUsdPerTon} \times \q{likelyTonPerAc}}{\q{likelyTonPerAc} \times \frac{\q{eatenPercent}}{100}}`,
      { says: 'The same when nothing goes wrong.' },
    ),
    formula('failedUsdPerTon', tex`\q{sownUsdPerTon} - \q{madeUsdPerTon}`, { says: 'The rest pays for tries that fail.' }),
  ]),
  byCase('dryUsdPerTon', { says: 'The same in a dry year.', onlyWhen: hasLow, ways: costWays('lowTonPerAc') }),
  formula(
    'hayEatenUsdPerTon',
    tex`\frac{\q{hayPriceUsdPerTon}}{(1 - \frac{\q{hayMoisturePercent}}{100}) \times (1 - \frac{\q{hayStoragePercent}}{100}) \times (1 - \frac{\q{hayFeedingPercent}}{100})}`,
    { says: 'Hay by the same measure: a dry ton that stock eat.', source: 'common practice' },
  ),
  formula('worthUsdPerTon', tex`\frac{\q{hayEatenUsdPerTon} \times \q{eatenPercent}}{100} - \q{cutUsdPerTon}`, {
    says: 'What a dry ton in the field may cost without costing more than that.',
  }),
  formula('evenTonPerAc', tex`\frac{100 \times \q{acreCostUsd}}{\q{madePercent} \times \q{worthUsdPerTon}}`, {
    says: 'The yield at which both cost the same.',
    onlyWhen: ({ worthUsdPerTon }) => worthUsdPerTon > 0,
    source: 'common practice',
  }),
  formula('needStoredIn', tex`\max(0, \q{evenTonPerAc} \times \q{waterPerTonIn} - \frac{\q{likelyRainIn} \times \q{usedPercent}}{100})`, {
    says: 'The water that takes, less the likely rain: this much must stand in the soil.',
    onlyWhen: ({ canPay }) => canPay === 'yes',
  }),
  lookup('verdict', { says: 'In time? Then the likely cost against hay, then the cost in a dry year.', source: 'common practice' }),
  lookup('grazeHeightIn', {
    says: 'The tallest of the published heights before stock go in.',
    onlyWhen: ({ hazard }) => hazard === 'prussic-nitrate',
    source: 'seedway-sorghum, heights',
  }),
  formula('spentUsd', tex`\q{acreCostUsd} \times \q{areaAc}`, { says: 'Money that is gone if it fails.' }),
  formula('feedTon', tex`\frac{\q{areaAc} \times \q{likelyTonPerAc} \times \q{eatenPercent}}{100}`, {
    says: 'Feed if it is made.',
    onlyWhen: hasLikely,
  }),
  tabulate('byYield', {
    says: 'Both costs at other yields. Hay does not care how your crop did.',
    formulas: { atYieldUsdPerTon: costWays('yieldTonPerAc'), hayUsdPerTon: tex`\q{hayEatenUsdPerTon}` },
  }),
];
