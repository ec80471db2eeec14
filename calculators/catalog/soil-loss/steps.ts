import type { ValuesOf } from '../../kit/inputs.ts';
import type { Step } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type SoilLossStep = Step<ValuesOf<typeof inputs> & Results, Results>;

type Sizes = Pick<Results, 'lossSize' | 'ploughedSize' | 'timesRatio'> & { readonly ploughed: string };
/** Bare fallow is a yardstick, not a way to farm: it is told as one figure and compared no further. */
export const isFarmed = ({ ploughed }: Sizes): boolean => ploughed !== 'bare-fallow';
export const losesFarmed = (sizes: Sizes): boolean => isFarmed(sizes) && sizes.ploughedSize === 'whole';
export const canDivide = (sizes: Sizes): boolean => isFarmed(sizes) && sizes.lossSize === 'whole' && sizes.timesRatio >= 1.5;

const handbook = 'wischmeier-smith-1978';
/** Each form is credited to its own book. */
const isNew = ({ slopeBook }: { readonly slopeBook: string }): boolean => slopeBook === 'revised-1997';
const isOld = ({ slopeBook }: { readonly slopeBook: string }): boolean => slopeBook === 'handbook-1978';
const oldSteepness = String.raw`65.41 \times \q{sineRatio}^2 + 4.56 \times \q{sineRatio} + 0.065`;
const newSteepness = [
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent < 9, formula: String.raw`10.8 \times \q{sineRatio} + 0.03`, because: 'under 9 %' },
  { formula: String.raw`16.8 \times \q{sineRatio} - 0.5`, because: 'from 9 %' },
] as const;

const placeSteps: readonly SoilLossStep[] = [
  {
    kind: 'formula',
    shows: 'yearRainMm',
    onlyWhen: ({ rainFrom }) => rainFrom === 'year-rain',
    says: 'The rain of a year in millimeters: the last resort is worked in metric units.',
    ways: [{ formula: String.raw`25.4 \times \q{yearRainIn}` }],
  },
  {
    kind: 'formula',
    shows: 'yearFactorRatio',
    onlyWhen: ({ rainFrom }) => rainFrom === 'year-rain',
    says: 'The rain factor that one fit for the whole country gives for so much rain.',
    source: 'renard-freimund-1994, annual form',
    ways: [
      { when: ({ yearRainMm }) => yearRainMm < 850, formula: String.raw`0.0483 \times \q{yearRainMm}^{1.61}`, because: 'under 850 mm' },
      { formula: String.raw`587.8 - 1.219 \times \q{yearRainMm} + 0.004105 \times \q{yearRainMm}^2`, because: 'from 850 mm' },
    ],
  },
  {
    kind: 'formula',
    shows: 'erosivityRatio',
    says: 'How hard the rain beats in a year.',
    source: 'foster-1981, table 2',
    ways: [
      { when: ({ rainFrom }) => rainFrom === 'known', formula: String.raw`\q{rainFactorRatio}`, because: 'the local figure' },
      {
        formula: String.raw`\q{yearFactorRatio} \times \frac{0.40468564224}{100 \times 0.3048 \times 2000 \times 4.4482216152605 \times 25.4 / 1000000}`,
        because: 'metric to US units; the fraction is 1 / 17.02',
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'erodibilityRatio',
    onlyWhen: ({ soilFrom }) => soilFrom === 'known',
    says: 'How easily the soil washes, from the survey.',
    ways: [{ formula: String.raw`\q{soilFactorRatio}` }],
  },
  {
    kind: 'lookup',
    shows: 'erodibilityRatio',
    onlyWhen: ({ soilFrom, erodibilityList }) => soilFrom === 'texture' && erodibilityList === 'stewart-1975',
    says: 'How easily the soil washes: by texture, straight between the list’s levels of organic matter (0.5, 2 and 4 %).',
    source: 'stewart-1975, soil erodibility by texture',
  },
  {
    kind: 'lookup',
    shows: 'erodibilityRatio',
    onlyWhen: ({ soilFrom, erodibilityList }) => soilFrom === 'texture' && erodibilityList === 'stone-hilborn-2012',
    says: 'How easily the soil washes: by texture, with one value to 2 % organic matter and one above.',
    source: 'stone-hilborn-2012, table 2',
  },
  {
    kind: 'formula',
    shows: 'groundSlopePercent',
    says: 'How steep it is.',
    ways: [
      { when: ({ slopeFrom }) => slopeFrom === 'known', formula: String.raw`\q{slopePercent}` },
      { formula: String.raw`\frac{\q{riseIn}}{120} \times 100`, because: 'a 10-ft board is 120 inches' },
    ],
  },
  {
    kind: 'formula',
    shows: 'runFt',
    says: 'How far water runs before it gathers or slows.',
    ways: [
      { when: ({ lengthFrom }) => lengthFrom === 'known', formula: String.raw`\q{lengthFt}` },
      { formula: String.raw`\q{stepsCount} \times \q{stepFt}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'sineRatio',
    says: 'The sine of that slope.',
    ways: [{ formula: String.raw`\frac{\q{groundSlopePercent}}{\sqrt{10000 + \q{groundSlopePercent}^2}}` }],
  },
  {
    kind: 'formula',
    shows: 'steepnessRatio',
    onlyWhen: isOld,
    says: 'What the steepness does, against a slope of 9 %, by the older form.',
    source: `${handbook}, p. 12`,
    ways: [{ formula: oldSteepness }],
  },
  {
    kind: 'formula',
    shows: 'steepnessRatio',
    onlyWhen: isNew,
    says: 'What the steepness does, against a slope of 9 %, by the later form.',
    source: 'renard-1997, eq. 4-4 and 4-5; mccool-1987',
    ways: newSteepness,
  },
  {
    kind: 'formula',
    shows: 'otherSteepnessRatio',
    onlyWhen: isNew,
    says: 'By the older form it would be this.',
    source: `${handbook}, p. 12`,
    ways: [{ formula: oldSteepness }],
  },
  {
    kind: 'formula',
    shows: 'otherSteepnessRatio',
    onlyWhen: isOld,
    says: 'By the later form it would be this.',
    source: 'renard-1997, eq. 4-4 and 4-5; mccool-1987',
    ways: newSteepness,
  },
];

/** The older form's exponent goes by steepness alone; the later one's by how much of the washing is done in rills. */
const oldExponent = [
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent < 1, formula: '0.2', because: 'under 1 %' },
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent <= 3, formula: '0.3', because: '1 to 3 %' },
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent < 5, formula: '0.4', because: 'over 3 to under 5 %' },
  { formula: '0.5', because: 'from 5 %' },
] as const;
const exponentSteps = (shows: 'sodExponentRatio' | 'tilledExponentRatio', rills: string, says: string): readonly SoilLossStep[] => [
  { kind: 'formula', shows, onlyWhen: isOld, says, source: `${handbook}, p. 12 (0.2 from memory)`, ways: oldExponent },
  {
    kind: 'formula',
    shows,
    onlyWhen: isNew,
    says,
    source: 'renard-1997, eq. 4-2',
    ways: [{ formula: String.raw`\frac{\q{${rills}}}{1 + \q{${rills}}}` }],
  },
];
const slopeFormula = (exponent: string): string => String.raw`(\frac{\q{runFt}}{72.6})^{\q{${exponent}}} \times \q{steepnessRatio}`;

const slopeSteps: readonly SoilLossStep[] = [
  {
    kind: 'formula',
    shows: 'sodRillRatio',
    onlyWhen: isNew,
    says: 'Under sod: how much washes in rills against the ground between. Half of what tilled ground has.',
    source: 'renard-1997, eq. 4-3; the half is from memory',
    ways: [{ formula: String.raw`0.5 \times \frac{\q{sineRatio} / 0.0896}{3 \times \q{sineRatio}^{0.8} + 0.56}` }],
  },
  ...exponentSteps('sodExponentRatio', 'sodRillRatio', 'How strongly length counts under sod.'),
  {
    kind: 'formula',
    shows: 'sodSlopeRatio',
    says: 'Length and steepness together, under sod. The yardstick is a slope of 72.6 ft at 9 %, in both forms.',
    source: `${handbook}, p. 12; renard-1997, chapter 4`,
    ways: [{ formula: slopeFormula('sodExponentRatio') }],
  },
  {
    kind: 'formula',
    shows: 'tilledRillRatio',
    onlyWhen: isNew,
    says: 'The same for tilled ground.',
    source: 'renard-1997, eq. 4-3',
    ways: [{ formula: String.raw`\frac{\q{sineRatio} / 0.0896}{3 \times \q{sineRatio}^{0.8} + 0.56}` }],
  },
  ...exponentSteps('tilledExponentRatio', 'tilledRillRatio', 'How strongly length counts when it is tilled.'),
  {
    kind: 'formula',
    shows: 'tilledSlopeRatio',
    says: 'Length and steepness together, tilled.',
    source: `${handbook}, p. 12; renard-1997, chapter 4`,
    ways: [{ formula: slopeFormula('tilledExponentRatio') }],
  },
];

const inchYears = (loss: string): string => String.raw`\frac{0.0254 \times 4046.8564224 / 0.90718474 \times \q{densityGPerCm3}}{\q{${loss}}}`;

const lossSteps: readonly SoilLossStep[] = [
  {
    kind: 'lookup',
    shows: 'coverRatio',
    says: 'What share of bare fallow’s loss this cover lets go: {groundCoverPercent} covered, between the columns of the pasture table {coverBetween}.',
    source: 'scs-agronomy-note-50-1982, table 1; straight lines as in colorado-permit-c-81-008',
  },
  {
    kind: 'lookup',
    shows: 'otherCoverRatio',
    says: 'Read the other way between the columns.',
    source: 'scs-agronomy-note-50-1982, table 1',
  },
  {
    kind: 'formula',
    shows: 'lossTonPerAc',
    says: 'Rain, soil, slope and cover multiplied. Nothing is tilled, so there is no practice factor.',
    source: `${handbook}, eq. 1`,
    ways: [{ formula: String.raw`\q{erosivityRatio} \times \q{erodibilityRatio} \times \q{sodSlopeRatio} \times \q{coverRatio}` }],
  },
  {
    kind: 'lookup',
    shows: 'otherTonPerAc',
    says: 'The same sums with length and steepness worked by the other form.',
    source: `${handbook}, p. 12; renard-1997, chapter 4`,
  },
  {
    kind: 'formula',
    shows: 'lowTonPerAc',
    says: 'It is good to a factor of two: half of it,',
    ways: [{ formula: String.raw`\frac{\q{lossTonPerAc}}{2}` }],
  },
  { kind: 'formula', shows: 'highTonPerAc', says: 'to twice it.', ways: [{ formula: String.raw`2 \times \q{lossTonPerAc}` }] },
  {
    kind: 'formula',
    shows: 'fallowTonPerAc',
    says: 'The same ground tilled and kept bare all year: the handbook’s yardstick. Nobody farms so.',
    source: `${handbook}, definition of C`,
    ways: [{ formula: String.raw`\q{erosivityRatio} \times \q{erodibilityRatio} \times \q{tilledSlopeRatio}` }],
  },
  {
    kind: 'lookup',
    shows: 'cropCoverRatio',
    onlyWhen: ({ ploughed }) => ploughed === 'corn-soybeans' || ploughed === 'wheat-fallow' || ploughed === 'wheat-stubble',
    says: 'What share of that the rotation lets go, as a mean of its years. Where the list gives a span, its middle.',
    source: 'stewart-1975, generalized C values (from memory)',
  },
  {
    kind: 'lookup',
    shows: 'cropCoverRatio',
    onlyWhen: ({ ploughed }) => ploughed === 'wheat-meadow-corn',
    says: 'What share of that the rotation lets go. It is the handbook’s own example, a year of meadow in four.',
    source: `${handbook}, example for Fountain County, Indiana (from memory)`,
  },
  {
    kind: 'formula',
    shows: 'cropCoverRatio',
    onlyWhen: ({ ploughed }) => ploughed === 'own',
    says: 'What share of that your rotation lets go.',
    ways: [{ formula: String.raw`\q{ploughedCoverRatio}` }],
  },
  {
    kind: 'formula',
    shows: 'ploughedTonPerAc',
    says: 'The plowed ground’s loss: {ploughed}.',
    source: `${handbook}, eq. 1`,
    ways: [
      { when: ({ ploughed }) => ploughed === 'bare-fallow', formula: String.raw`\q{fallowTonPerAc}`, because: 'bare fallow itself' },
      { formula: String.raw`\q{fallowTonPerAc} \times \q{cropCoverRatio} \times \q{practiceRatio}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'timesRatio',
    onlyWhen: canDivide,
    says: 'Plowed against pasture. Rain and soil are the same in both, so this is surer than either figure.',
    ways: [{ formula: String.raw`\frac{\q{ploughedTonPerAc}}{\q{lossTonPerAc}}` }],
  },
  {
    kind: 'lookup',
    shows: 'toleratedTonPerAc',
    onlyWhen: ({ toleranceFrom }) => toleranceFrom === 'depth',
    says: 'What the soil is said to bear, by how deep roots go.',
    source: 'mccormack-young-1981, guide for T (from memory)',
  },
  {
    kind: 'formula',
    shows: 'toleratedTonPerAc',
    onlyWhen: ({ toleranceFrom }) => toleranceFrom === 'known',
    says: 'What the soil is said to bear, from the survey.',
    ways: [{ formula: String.raw`\q{surveyTonPerAc}` }],
  },
  {
    kind: 'formula',
    shows: 'loadsCount',
    says: 'Off the whole pasture, in truck loads.',
    ways: [{ formula: String.raw`\frac{\q{lossTonPerAc} \times \q{areaAc}}{\q{truckTon}}` }],
  },
  {
    kind: 'formula',
    shows: 'ploughedLoadsCount',
    onlyWhen: losesFarmed,
    says: 'And if it were plowed.',
    ways: [{ formula: String.raw`\frac{\q{ploughedTonPerAc} \times \q{areaAc}}{\q{truckTon}}` }],
  },
  {
    kind: 'formula',
    shows: 'inchYears',
    says: 'Years in which an inch goes: an inch of soil on an acre weighs about 113 tons times its density.',
    source: 'common practice',
    ways: [{ formula: inchYears('lossTonPerAc') }],
  },
  { kind: 'formula', shows: 'ploughedInchYears', onlyWhen: losesFarmed, says: 'And plowed.', ways: [{ formula: inchYears('ploughedTonPerAc') }] },
  {
    kind: 'formula',
    shows: 'thirtyYearsIn',
    says: 'What thirty such years take.',
    ways: [{ formula: String.raw`\frac{30}{\q{inchYears}}` }],
  },
  {
    kind: 'formula',
    shows: 'ploughedThirtyYearsIn',
    onlyWhen: losesFarmed,
    says: 'And plowed.',
    ways: [{ formula: String.raw`\frac{30}{\q{ploughedInchYears}}` }],
  },
];

export const steps: readonly SoilLossStep[] = [...placeSteps, ...slopeSteps, ...lossSteps];
