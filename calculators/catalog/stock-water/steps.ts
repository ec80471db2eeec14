import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { Results } from './compute.ts';
import type { Values } from './inputs.ts';

export type All = Values & Results;
/** Water reaches a trough through a pipe that was given. */
export const isPiped = ({ supply, drinkFrom, pipe }: Pick<Values, 'supply' | 'drinkFrom' | 'pipe'>): boolean =>
  pipe === 'piped' && (supply === 'flow' || (supply === 'pond' && drinkFrom === 'trough'));

/** What the pipe between the water and the trough lets through. */
export const pipeSteps: Working<All, Results> = [
  when(isPiped, [
    lookup('pipeInsideIn', { says: 'Inside of that pipe. From memory of the standard.', source: 'astm-d2239' }),
    formula(
      'pipeGpm',
      tex`(\frac{100 \times \q{pipeHeadFt} \times \q{pipeInsideIn}^{4.8655}}{0.2083 \times (\frac{100}{140})^{1.852} \times \q{pipeLengthFt}})^{1 / 1.852}`,
      {
        says: 'Flow at which friction uses up the whole fall (Hazen-Williams, 140 for plastic).',
        source: 'engineering-toolbox-hazen-williams, equation 1 solved for the flow',
      },
    ),
  ]),
  byCase('arrivesGpm', {
    onlyWhen: ({ supply }) => supply === 'flow',
    says: 'What reaches the trough.',
    source: 'common practice',
    ways: [
      { when: ({ pipe }) => pipe === 'piped', formula: tex`\min(\q{flowGpm}, \q{pipeGpm})`, because: 'the pipe lets no more through' },
      { formula: tex`\q{flowGpm}` },
    ],
  }),
];

type WaterSteps = Working<All, Results>;
export const isPond = ({ supply }: Pick<Values, 'supply'>): boolean => supply === 'pond';
const isFlow = ({ supply }: All): boolean => supply === 'flow';
const isHauled = ({ supply }: All): boolean => supply === 'hauled';
export const isRunningDown = ({ verdict }: Pick<Results, 'verdict'>): boolean => verdict === 'lasts' || verdict === 'short';
export const hasTrough = ({ supply, drinkFrom }: Pick<Values, 'supply' | 'drinkFrom'>): boolean => supply !== 'pond' || drinkFrom === 'trough';
const comesAsHerd = ({ comes }: All): boolean => comes === 'herd';

const pondSteps: WaterSteps = [
  when(isPond, [
    byCase('pondAc', {
      says: 'The water surface. An acre is 43,560 sq ft.',
      source: 'common practice',
      ways: [
        { when: ({ surfaceFrom }) => surfaceFrom === 'known', formula: tex`\q{surfaceAc}`, because: 'as you gave it' },
        {
          when: ({ surfaceFrom }) => surfaceFrom === 'across',
          formula: tex`\frac{\pi \times \q{lengthFt} \times \q{widthFt}}{4 \times 43560}`,
          because: 'taken as an ellipse',
        },
        { formula: tex`\frac{\q{shoreFt}^2}{4 \times \pi \times 43560}`, because: 'a circle, the most that this shore can hold' },
      ],
    }),
    formula('pondGal', tex`0.4 \times \q{pondAc} \times \q{maxDepthFt} \times \frac{43560 \times 1728}{231}`, {
      says: 'Water in a pond with gently sloping sides: 0.4 of surface times greatest depth, turned into gallons.',
      source: 'dpird-dam-volume, simple, rough estimate of current water volume',
    }),
    formula('deadGal', tex`\q{pondGal} \times (\frac{\q{deadDepthFt}}{\q{maxDepthFt}})^{2.5}`, {
      says: 'Of that, below the depth to leave in. The 2.5 follows from the 0.4: it must hold at every depth.',
      source: 'our own, from V = 0.4 A D',
    }),
    formula('usableGal', tex`\q{pondGal} - \q{deadGal}`, { says: 'The rest can be drunk.' }),
    byCase('lossInPerDay', {
      says: 'What sun and ground take in a day.',
      source: 'common practice',
      ways: [
        {
          when: ({ lossFrom }) => lossFrom === 'stake',
          formula: tex`\frac{1}{\q{stakeDays}} (\q{dropIn} - \frac{\q{stakeDrunkGal} \times 231}{\q{pondAc} \times 3630 \times 1728})`,
          because: 'the fall on the stake, less what was drunk',
        },
        { formula: tex`\q{evaporationInPerDay} + \q{seepageInPerDay}` },
      ],
    }),
    formula('firstDayLossGal', tex`\q{pondGal} \times (1 - (\frac{\max(\q{maxDepthFt} - \q{lossInPerDay} / 12, 0)}{\q{maxDepthFt}})^{2.5})`, {
      says: 'In gallons, on the first day. Set it beside what they drink.',
    }),
    tabulate('firstDays', {
      says: 'Then day by day: the level falls by sun and ground, they drink, and the depth follows from what is left. The first days in full.',
      source: 'our own, daily steps with V = 0.4 A D',
      formulas: {
        sunkFt: tex`\max(\q{morningFt} - \frac{\q{lossInPerDay}}{12}, 0)`,
        sunkGal: tex`\q{pondGal} \times (\frac{\q{sunkFt}}{\q{maxDepthFt}})^{2.5}`,
        drunkGal: tex`\min(\q{needGalPerDay}, \max(\q{sunkGal} - \q{deadGal}, 0))`,
        eveningGal: tex`\q{sunkGal} - \q{drunkGal}`,
        eveningFt: tex`\q{maxDepthFt} \times (\frac{\q{eveningGal}}{\q{pondGal}})^{0.4}`,
      },
    }),
    lookup('lastsDays', {
      says: 'The same for each day after, up to the first on which they get less than they need, or 365. Whole days with enough water.',
      source: 'our own, daily steps with V = 0.4 A D',
    }),
    lookup('leastDays', { says: 'And once more with a quarter more taken by sun and ground.', source: 'our own, daily steps with V = 0.4 A D' }),
    {
      kind: 'check',
      says: 'The books balance: what was there went down a throat, into the air or the ground, or is left.',
      left: tex`\q{pondGal}`,
      right: tex`\q{drunkGal} + \q{lostGal} + \q{leftGal}`,
      because: 'no water comes from nowhere',
    },
    formula('drinkOnlyDays', tex`\frac{\q{usableGal}}{\q{needGalPerDay}}`, {
      says: 'What one would count if nothing dried up. Nobody has such a pond.',
    }),
  ]),
];

const tankSteps: WaterSteps = [
  byCase('flowGpm', {
    onlyWhen: isFlow,
    says: 'The flow.',
    source: 'common practice',
    ways: [
      { when: ({ flowFrom }) => flowFrom === 'known', formula: tex`\q{knownGpm}`, because: 'as you gave it' },
      { formula: tex`\frac{60 \times \q{bucketGal}}{\q{bucketFillS}}` },
    ],
  }),
  ...pipeSteps,
  when(
    ({ supply }) => supply !== 'pond',
    [
      byCase('supplyGalPerDay', {
        says: 'What comes in, in a day.',
        source: 'common practice',
        ways: [
          { when: isFlow, formula: tex`60 \times \q{arrivesGpm} \times \q{pumpedHr}` },
          { formula: tex`\frac{\q{loadGal} \times \q{weeklyLoadsCount}}{7}` },
        ],
      }),
      formula('supplyPercent', tex`\frac{100 \times \q{supplyGalPerDay}}{\q{needGalPerDay}}`, { says: 'Of what they drink.' }),
    ],
  ),
  formula('neededHr', tex`\frac{\q{needGalPerDay}}{60 \times \q{arrivesGpm}}`, {
    onlyWhen: isFlow,
    says: 'Hours that it must run to bring all of it. More than 24 cannot be.',
    source: 'alberta-pasture-pipeline, step 2',
  }),
  formula('neededLoadsCount', tex`\frac{7 \times \q{needGalPerDay}}{\q{loadGal}}`, {
    onlyWhen: isHauled,
    says: 'Loads a week that bring all of it.',
  }),
  formula('shortGalPerDay', tex`\max(\q{needGalPerDay} - \q{supplyGalPerDay}, 0)`, {
    onlyWhen: ({ supply }) => supply !== 'pond',
    says: 'The rest comes out of storage.',
  }),
];

const storedSteps: WaterSteps = [
  byCase('storedGal', {
    onlyWhen: ({ storage }) => storage !== 'none',
    says: 'Water in tanks. A cubic foot is 1,728 cubic inches, a gallon 231 of them.',
    source: 'weathers-1913, square-built and circular tanks',
    ways: [
      { when: ({ storage }) => storage === 'known', formula: tex`\q{ownStoredGal}`, because: 'as you gave it' },
      {
        when: ({ storage }) => storage === 'round',
        formula: tex`\q{tanksCount} \times \frac{\pi}{4} \times \q{tankAcrossFt}^2 \times \q{tankDepthFt} \times \frac{1728}{231}`,
      },
      {
        when: ({ storage }) => storage === 'square',
        formula: tex`\q{tanksCount} \times \q{tankLengthFt} \times \q{tankWidthFt} \times \q{tankDepthFt} \times \frac{1728}{231}`,
      },
      {
        formula: tex`\q{tanksCount} ((\q{tankLengthFt} - \q{tankWidthFt}) \q{tankWidthFt} + \frac{\pi}{4} \q{tankWidthFt}^2) \q{tankDepthFt} \times \frac{1728}{231}`,
        because: 'straight sides, half-round ends',
      },
    ],
  }),
  lookup('lastsDays', {
    onlyWhen: (values) => !isPond(values) && isRunningDown(values),
    says: '{storedGal} stored over {shortGalPerDay} short, in whole days.',
    source: 'common practice',
  }),
  lookup('mostDays', {
    onlyWhen: (values) => isRunningDown(values) && values.intakeFrom === 'lists',
    says: 'The same if they drink no more than the lowest lists say, {leastNeedGalPerDay}.',
    source: 'our own, the same sums',
  }),
  formula('storedDays', tex`\frac{\q{storedGal}}{\q{needGalPerDay}}`, { says: 'If nothing came in, what is stored would last.' }),
  formula('reserveGal', tex`3 \times \q{needGalPerDay}`, {
    says: 'Three days to keep, for a broken pump, a dead well or water gone bad.',
    source: 'klausmeyer-watering, third paragraph',
  }),
  formula('reserveShortGal', tex`\max(\q{reserveGal} - \q{storedGal}, 0)`, { says: 'Of that, not yet stored.' }),
];

const troughSteps: WaterSteps = [
  lookup('comes', {
    onlyWhen: hasTrough,
    says: 'From {walkFt} away. The source leaves 900 to 1,000 ft open; the herd is the safe side.',
    source: 'ohioline-anr12-2003, the water trough or tank',
  }),
  formula('troughGal', tex`\frac{25}{100} \times \q{needGalPerDay}`, {
    onlyWhen: (values) => hasTrough(values) && comesAsHerd(values),
    says: 'A herd wants a quarter of the day’s water there when it comes.',
    source: 'ohioline-anr12-2003, the water trough or tank',
  }),
  when(hasTrough, [
    byCase('refillGpm', {
      says: 'And this much running in.',
      source: 'ohioline-anr12-2003, the water trough or tank',
      ways: [
        { when: comesAsHerd, formula: tex`\frac{\q{troughGal}}{60}`, because: 'full again within the hour' },
        { formula: tex`\frac{\q{needGalPerDay}}{4 \times 60}`, because: 'the day’s water in four hours' },
      ],
    }),
    byCase('atOnceHead', {
      says: 'Head that drink at one time.',
      source: 'ohioline-anr12-2003, the water trough or tank',
      ways: [{ when: comesAsHerd, formula: tex`\frac{10}{100} \times \q{headCount}` }, { formula: tex`\frac{4}{100} \times \q{headCount}` }],
    }),
    formula('edgeFt', tex`2 \times \q{atOnceHead}`, {
      says: 'Two feet of trough edge for each.',
      source: 'ohioline-anr12-2003, the water trough or tank',
    }),
  ]),
];

export const steps: WaterSteps = [
  tabulate('lines', {
    says: 'Each kind: gallons for one, times head. From the lists it is the most that any of them says up to {hotF}, with the lowest list beside it; where no list goes by heat, half as much again from 80 °F on (common practice). A figure of your own stands for both, whatever the heat.',
    source: 'gould-fs1090, with beef-summer-water and the other lists named',
    formulas: { lineGalPerDay: tex`\q{countHead} \times \q{eachGalPerDay}`, leastLineGalPerDay: tex`\q{countHead} \times \q{leastGalPerDay}` },
    sums: { needGalPerDay: 'lineGalPerDay', leastNeedGalPerDay: 'leastLineGalPerDay' },
  }),
  ...pondSteps,
  ...tankSteps,
  ...storedSteps,
  ...troughSteps,
];
