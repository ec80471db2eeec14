import type { ValuesOf } from '../../kit/inputs.ts';
import type { Step } from '../../kit/steps.ts';
import { type compute, leastTonPerAc } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
export type All = ValuesOf<typeof inputs> & Results;
export const hasLikely = ({ likelyTonPerAc }: All): boolean => likelyTonPerAc >= leastTonPerAc;
export const hasLow = ({ lowTonPerAc }: All): boolean => lowTonPerAc >= leastTonPerAc;
export const inTime = ({ timing }: All): boolean => timing === 'in-time';
const volesky = 'volesky-g2012, water-use efficiency of forages';
const yieldWays = (water: string) => [{ formula: String.raw`\min(\frac{\q{${water}}}{\q{waterPerTonIn}}, \q{mostTonPerAc})` }] as const;
const made = String.raw`\frac{\q{madePercent}}{100}`;
const costWays = (tons: string) =>
  [
    {
      formula: String.raw`\frac{\q{acreCostUsd} + \q{cutUsdPerTon} \times \q{${tons}} \times ${made}}{\q{${tons}} \times ${made} \times \frac{\q{eatenPercent}}{100}}`,
    },
  ] as const;

export const steps: readonly Step<All, Results>[] = [
  { kind: 'lookup', shows: 'leftDays', says: 'Days between the sowing and the frost.', source: 'common practice' },
  {
    kind: 'lookup',
    shows: 'timing',
    says: 'It must be used before the frost, and a warm-season crop must not be sown in cold soil.',
    source: 'uga-planting-warm-annuals, soil temperature',
  },
  {
    kind: 'lookup',
    shows: 'heldPerFtIn',
    says: 'What a foot of such soil holds for plants when full: the middle of the list.',
    onlyWhen: ({ storedFrom }) => storedFrom === 'feel',
    source: 'ucdavis-drought-awc, available water by texture',
  },
  {
    kind: 'formula',
    shows: 'storedNowIn',
    says: 'What is in it now, as deep as roots will go.',
    source: 'allen-1998, eq. 82',
    ways: [
      { when: ({ storedFrom }) => storedFrom === 'known', formula: String.raw`\q{knownStoredIn}` },
      { formula: String.raw`\frac{\q{rootDepthIn}}{12} \times \q{heldPerFtIn} \times \frac{\q{filledPercent}}{100}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'likelyWaterIn',
    says: 'Water for the crop: what is stored, and its share of the likely rain.',
    source: 'common practice',
    ways: [{ formula: String.raw`\q{storedNowIn} + \frac{\q{likelyRainIn} \times \q{usedPercent}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'lowWaterIn',
    says: 'The same in a dry year.',
    ways: [{ formula: String.raw`\q{storedNowIn} + \frac{\q{lowRainIn} \times \q{usedPercent}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'likelyTonPerAc',
    says: 'Tons: the water divided by what a ton takes, but no more than the crop can make.',
    source: volesky,
    ways: yieldWays('likelyWaterIn'),
  },
  { kind: 'formula', shows: 'lowTonPerAc', says: 'Tons in a dry year.', source: volesky, ways: yieldWays('lowWaterIn') },
  {
    kind: 'formula',
    shows: 'acreCostUsd',
    says: 'What an acre costs, made or not.',
    ways: [{ formula: String.raw`\q{seedUsd} + \q{sowingUsd} + \q{feedUsd} + \q{otherUsd}` }],
  },
  {
    kind: 'formula',
    shows: 'cutUsdPerTon',
    says: 'What a ton costs to cut and bale.',
    ways: [
      { when: ({ use }) => use === 'bale', formula: String.raw`\q{balingUsdPerTon}` },
      { formula: '0', because: 'stock cut it themselves' },
    ],
  },
  {
    kind: 'formula',
    shows: 'madePercent',
    says: 'Tries that make a crop, by your judgement.',
    ways: [{ formula: String.raw`100 - 10 \times \q{failCount}` }],
  },
  {
    kind: 'formula',
    shows: 'sownUsdPerTon',
    says: 'Cost of a dry ton eaten. The good tries pay for the failed ones.',
    onlyWhen: hasLikely,
    source: 'common practice',
    ways: costWays('likelyTonPerAc'),
  },
  {
    kind: 'formula',
    shows: 'madeUsdPerTon',
    says: 'The same when nothing goes wrong.',
    onlyWhen: hasLikely,
    ways: [
      {
        formula: String.raw`\frac{\q{acreCostUsd} + \q{cutUsdPerTon} \times \q{likelyTonPerAc}}{\q{likelyTonPerAc} \times \frac{\q{eatenPercent}}{100}}`,
      },
    ],
  },
  { kind: 'formula', shows: 'dryUsdPerTon', says: 'The same in a dry year.', onlyWhen: hasLow, ways: costWays('lowTonPerAc') },
  {
    kind: 'formula',
    shows: 'hayEatenUsdPerTon',
    says: 'Hay by the same measure: a dry ton that stock eat.',
    source: 'common practice',
    ways: [
      {
        formula: String.raw`\frac{\q{hayPriceUsdPerTon}}{(1 - \frac{\q{hayMoisturePercent}}{100}) \times (1 - \frac{\q{hayStoragePercent}}{100}) \times (1 - \frac{\q{hayFeedingPercent}}{100})}`,
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'worthUsdPerTon',
    says: 'What a dry ton in the field may cost without costing more than that.',
    ways: [{ formula: String.raw`\frac{\q{hayEatenUsdPerTon} \times \q{eatenPercent}}{100} - \q{cutUsdPerTon}` }],
  },
  {
    kind: 'formula',
    shows: 'evenTonPerAc',
    says: 'Tons an acre at which both cost the same.',
    onlyWhen: ({ worthUsdPerTon }) => worthUsdPerTon > 0,
    source: 'common practice',
    ways: [{ formula: String.raw`\frac{100 \times \q{acreCostUsd}}{\q{madePercent} \times \q{worthUsdPerTon}}` }],
  },
  {
    kind: 'formula',
    shows: 'needStoredIn',
    says: 'The water that takes, less the likely rain: this much must stand in the soil.',
    onlyWhen: ({ canPay }) => canPay === 'yes',
    ways: [{ formula: String.raw`\max(0, \q{evenTonPerAc} \times \q{waterPerTonIn} - \frac{\q{likelyRainIn} \times \q{usedPercent}}{100})` }],
  },
  {
    kind: 'lookup',
    shows: 'verdict',
    says: 'In time? Then the likely cost against hay, then the cost in a dry year.',
    source: 'common practice',
  },
  {
    kind: 'lookup',
    shows: 'grazeHeightIn',
    says: 'The tallest of the published heights before stock go in.',
    onlyWhen: ({ hazard }) => hazard === 'prussic-nitrate',
    source: 'seedway-sorghum, heights',
  },
  { kind: 'formula', shows: 'spentUsd', says: 'Money that is gone if it fails.', ways: [{ formula: String.raw`\q{acreCostUsd} \times \q{areaAc}` }] },
  {
    kind: 'formula',
    shows: 'feedTon',
    says: 'Feed if it is made.',
    onlyWhen: hasLikely,
    ways: [{ formula: String.raw`\frac{\q{areaAc} \times \q{likelyTonPerAc} \times \q{eatenPercent}}{100}` }],
  },
  {
    kind: 'rows',
    of: 'byYield',
    says: 'Both costs at other yields. Hay does not care how your crop did.',
    formulas: { atYieldUsdPerTon: costWays('yieldTonPerAc'), hayUsdPerTon: String.raw`\q{hayEatenUsdPerTon}` },
  },
];
