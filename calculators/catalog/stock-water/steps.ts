import type { Step } from '../../kit/steps.ts';
import type { Results } from './compute.ts';
import type { Values } from './inputs.ts';
import { pipeSteps } from './pipeSteps.ts';

export type All = Values & Results;
type WaterStep = Step<All, Results>;
export const isPond = ({ supply }: Pick<Values, 'supply'>): boolean => supply === 'pond';
const isFlow = ({ supply }: All): boolean => supply === 'flow';
const isHauled = ({ supply }: All): boolean => supply === 'hauled';
export const isRunningDown = ({ verdict }: Pick<Results, 'verdict'>): boolean => verdict === 'lasts' || verdict === 'short';
export const hasTrough = ({ supply, drinkFrom }: Pick<Values, 'supply' | 'drinkFrom'>): boolean => supply !== 'pond' || drinkFrom === 'trough';
const comesAsHerd = ({ comes }: All): boolean => comes === 'herd';

const pondSteps: readonly WaterStep[] = [
  {
    kind: 'formula',
    shows: 'pondAc',
    onlyWhen: isPond,
    says: 'The water surface. An acre is 43,560 sq ft.',
    source: 'common practice',
    ways: [
      { when: ({ surfaceFrom }) => surfaceFrom === 'known', formula: String.raw`\q{surfaceAc}`, because: 'as you gave it' },
      {
        when: ({ surfaceFrom }) => surfaceFrom === 'across',
        formula: String.raw`\frac{\pi \times \q{lengthFt} \times \q{widthFt}}{4 \times 43560}`,
        because: 'taken as an ellipse',
      },
      { formula: String.raw`\frac{\q{shoreFt}^2}{4 \times \pi \times 43560}`, because: 'a circle, the most that this shore can hold' },
    ],
  },
  {
    kind: 'formula',
    shows: 'pondGal',
    onlyWhen: isPond,
    says: 'Water in a pond with gently sloping sides: 0.4 of surface times greatest depth, turned into gallons.',
    source: 'dpird-dam-volume, simple, rough estimate of current water volume',
    ways: [{ formula: String.raw`0.4 \times \q{pondAc} \times \q{maxDepthFt} \times \frac{43560 \times 1728}{231}` }],
  },
  {
    kind: 'formula',
    shows: 'deadGal',
    onlyWhen: isPond,
    says: 'Of that, below the depth to leave in. The 2.5 follows from the 0.4: it must hold at every depth.',
    source: 'our own, from V = 0.4 A D',
    ways: [{ formula: String.raw`\q{pondGal} \times (\frac{\q{deadDepthFt}}{\q{maxDepthFt}})^{2.5}` }],
  },
  {
    kind: 'formula',
    shows: 'usableGal',
    onlyWhen: isPond,
    says: 'The rest can be drunk.',
    ways: [{ formula: String.raw`\q{pondGal} - \q{deadGal}` }],
  },
  {
    kind: 'formula',
    shows: 'lossInPerDay',
    onlyWhen: isPond,
    says: 'What sun and ground take in a day.',
    source: 'common practice',
    ways: [
      {
        when: ({ lossFrom }) => lossFrom === 'stake',
        formula: String.raw`\frac{1}{\q{stakeDays}} (\q{dropIn} - \frac{\q{stakeDrunkGal} \times 231}{\q{pondAc} \times 3630 \times 1728})`,
        because: 'the fall on the stake, less what was drunk',
      },
      { formula: String.raw`\q{evaporationInPerDay} + \q{seepageInPerDay}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'firstDayLossGal',
    onlyWhen: isPond,
    says: 'In gallons, on the first day. Set it beside what they drink.',
    ways: [
      {
        formula: String.raw`\q{pondGal} \times (1 - (\frac{\max(\q{maxDepthFt} - \q{lossInPerDay} / 12, 0)}{\q{maxDepthFt}})^{2.5})`,
      },
    ],
  },
  {
    kind: 'rows',
    of: 'firstDays',
    onlyWhen: isPond,
    says: 'Then day by day: the level falls by sun and ground, they drink, and the depth follows from what is left. The first days in full.',
    source: 'our own, daily steps with V = 0.4 A D',
    formulas: {
      sunkFt: String.raw`\max(\q{morningFt} - \frac{\q{lossInPerDay}}{12}, 0)`,
      sunkGal: String.raw`\q{pondGal} \times (\frac{\q{sunkFt}}{\q{maxDepthFt}})^{2.5}`,
      drunkGal: String.raw`\min(\q{needGalPerDay}, \max(\q{sunkGal} - \q{deadGal}, 0))`,
      eveningGal: String.raw`\q{sunkGal} - \q{drunkGal}`,
      eveningFt: String.raw`\q{maxDepthFt} \times (\frac{\q{eveningGal}}{\q{pondGal}})^{0.4}`,
    },
  },
  {
    kind: 'lookup',
    shows: 'lastsDays',
    onlyWhen: isPond,
    says: 'The same for each day after, up to the first on which they get less than they need, or 365. Whole days with enough water.',
    source: 'our own, daily steps with V = 0.4 A D',
  },
  {
    kind: 'lookup',
    shows: 'leastDays',
    onlyWhen: isPond,
    says: 'And once more with a quarter more taken by sun and ground.',
    source: 'our own, daily steps with V = 0.4 A D',
  },
  {
    kind: 'check',
    onlyWhen: isPond,
    says: 'The books balance: what was there went down a throat, into the air or the ground, or is left.',
    left: String.raw`\q{pondGal}`,
    right: String.raw`\q{drunkGal} + \q{lostGal} + \q{leftGal}`,
    because: 'no water comes from nowhere',
  },
  {
    kind: 'formula',
    shows: 'drinkOnlyDays',
    onlyWhen: isPond,
    says: 'What one would count if nothing dried up. Nobody has such a pond.',
    ways: [{ formula: String.raw`\frac{\q{usableGal}}{\q{needGalPerDay}}` }],
  },
];

const tankSteps: readonly WaterStep[] = [
  {
    kind: 'formula',
    shows: 'flowGpm',
    onlyWhen: isFlow,
    says: 'The flow.',
    source: 'common practice',
    ways: [
      { when: ({ flowFrom }) => flowFrom === 'known', formula: String.raw`\q{knownGpm}`, because: 'as you gave it' },
      { formula: String.raw`\frac{60 \times \q{bucketGal}}{\q{bucketFillS}}` },
    ],
  },
  ...pipeSteps,
  {
    kind: 'formula',
    shows: 'supplyGalPerDay',
    onlyWhen: ({ supply }) => supply !== 'pond',
    says: 'What comes in, in a day.',
    source: 'common practice',
    ways: [
      { when: isFlow, formula: String.raw`60 \times \q{arrivesGpm} \times \q{pumpedHr}` },
      { formula: String.raw`\frac{\q{loadGal} \times \q{weeklyLoadsCount}}{7}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'supplyPercent',
    onlyWhen: ({ supply }) => supply !== 'pond',
    says: 'Of what they drink.',
    ways: [{ formula: String.raw`\frac{100 \times \q{supplyGalPerDay}}{\q{needGalPerDay}}` }],
  },
  {
    kind: 'formula',
    shows: 'neededHr',
    onlyWhen: isFlow,
    says: 'Hours that it must run to bring all of it. More than 24 cannot be.',
    source: 'alberta-pasture-pipeline, step 2',
    ways: [{ formula: String.raw`\frac{\q{needGalPerDay}}{60 \times \q{arrivesGpm}}` }],
  },
  {
    kind: 'formula',
    shows: 'neededLoadsCount',
    onlyWhen: isHauled,
    says: 'Loads a week that bring all of it.',
    ways: [{ formula: String.raw`\frac{7 \times \q{needGalPerDay}}{\q{loadGal}}` }],
  },
  {
    kind: 'formula',
    shows: 'shortGalPerDay',
    onlyWhen: ({ supply }) => supply !== 'pond',
    says: 'The rest comes out of storage.',
    ways: [{ formula: String.raw`\max(\q{needGalPerDay} - \q{supplyGalPerDay}, 0)` }],
  },
];

const storedSteps: readonly WaterStep[] = [
  {
    kind: 'formula',
    shows: 'storedGal',
    onlyWhen: ({ storage }) => storage !== 'none',
    says: 'Water in tanks. A cubic foot is 1,728 cubic inches, a gallon 231 of them.',
    source: 'weathers-1913, square-built and circular tanks',
    ways: [
      { when: ({ storage }) => storage === 'known', formula: String.raw`\q{ownStoredGal}`, because: 'as you gave it' },
      {
        when: ({ storage }) => storage === 'round',
        formula: String.raw`\q{tanksCount} \times \frac{\pi}{4} \times \q{tankAcrossFt}^2 \times \q{tankDepthFt} \times \frac{1728}{231}`,
      },
      {
        when: ({ storage }) => storage === 'square',
        formula: String.raw`\q{tanksCount} \times \q{tankLengthFt} \times \q{tankWidthFt} \times \q{tankDepthFt} \times \frac{1728}{231}`,
      },
      {
        formula: String.raw`\q{tanksCount} ((\q{tankLengthFt} - \q{tankWidthFt}) \q{tankWidthFt} + \frac{\pi}{4} \q{tankWidthFt}^2) \q{tankDepthFt} \times \frac{1728}{231}`,
        because: 'straight sides, half-round ends',
      },
    ],
  },
  {
    kind: 'lookup',
    shows: 'lastsDays',
    onlyWhen: (values) => !isPond(values) && isRunningDown(values),
    says: '{storedGal} stored over {shortGalPerDay} short, in whole days.',
    source: 'common practice',
  },
  {
    kind: 'lookup',
    shows: 'mostDays',
    onlyWhen: (values) => isRunningDown(values) && values.intakeFrom === 'lists',
    says: 'The same if they drink no more than the lowest lists say, {leastNeedGalPerDay}.',
    source: 'our own, the same sums',
  },
  {
    kind: 'formula',
    shows: 'storedDays',
    says: 'If nothing came in, what is stored would last.',
    ways: [{ formula: String.raw`\frac{\q{storedGal}}{\q{needGalPerDay}}` }],
  },
  {
    kind: 'formula',
    shows: 'reserveGal',
    says: 'Three days to keep, for a broken pump, a dead well or water gone bad.',
    source: 'klausmeyer-watering, third paragraph',
    ways: [{ formula: String.raw`3 \times \q{needGalPerDay}` }],
  },
  {
    kind: 'formula',
    shows: 'reserveShortGal',
    says: 'Of that, not yet stored.',
    ways: [{ formula: String.raw`\max(\q{reserveGal} - \q{storedGal}, 0)` }],
  },
];

const troughSteps: readonly WaterStep[] = [
  {
    kind: 'lookup',
    shows: 'comes',
    onlyWhen: hasTrough,
    says: 'From {walkFt} away. The source leaves 900 to 1,000 ft open; the herd is the safe side.',
    source: 'ohioline-anr12-2003, the water trough or tank',
  },
  {
    kind: 'formula',
    shows: 'troughGal',
    onlyWhen: (values) => hasTrough(values) && comesAsHerd(values),
    says: 'A herd wants a quarter of the day’s water there when it comes.',
    source: 'ohioline-anr12-2003, the water trough or tank',
    ways: [{ formula: String.raw`\frac{25}{100} \times \q{needGalPerDay}` }],
  },
  {
    kind: 'formula',
    shows: 'refillGpm',
    onlyWhen: hasTrough,
    says: 'And this much running in.',
    source: 'ohioline-anr12-2003, the water trough or tank',
    ways: [
      { when: comesAsHerd, formula: String.raw`\frac{\q{troughGal}}{60}`, because: 'full again within the hour' },
      { formula: String.raw`\frac{\q{needGalPerDay}}{4 \times 60}`, because: 'the day’s water in four hours' },
    ],
  },
  {
    kind: 'formula',
    shows: 'atOnceHead',
    onlyWhen: hasTrough,
    says: 'Head that drink at one time.',
    source: 'ohioline-anr12-2003, the water trough or tank',
    ways: [
      { when: comesAsHerd, formula: String.raw`\frac{10}{100} \times \q{headCount}` },
      { formula: String.raw`\frac{4}{100} \times \q{headCount}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'edgeFt',
    onlyWhen: hasTrough,
    says: 'Two feet of trough edge for each.',
    source: 'ohioline-anr12-2003, the water trough or tank',
    ways: [{ formula: String.raw`2 \times \q{atOnceHead}` }],
  },
];

export const steps: readonly WaterStep[] = [
  {
    kind: 'rows',
    of: 'lines',
    says: 'Each kind: gallons for one, times head. From the lists it is the most that any of them says up to {hotF}, with the lowest list beside it. A figure of your own stands for both, whatever the heat.',
    source: 'gould-fs1090, with beef-summer-water and the other lists named',
    formulas: {
      lineGalPerDay: String.raw`\q{countHead} \times \q{eachGalPerDay}`,
      leastLineGalPerDay: String.raw`\q{countHead} \times \q{leastGalPerDay}`,
    },
    sums: { needGalPerDay: 'lineGalPerDay', leastNeedGalPerDay: 'leastLineGalPerDay' },
  },
  ...pondSteps,
  ...tankSteps,
  ...storedSteps,
  ...troughSteps,
];
