import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, tex, type Working, when } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type SoilLossSteps = Working<ValuesOf<typeof inputs> & Results, Results>;

type Sizes = Pick<Results, 'lossSize' | 'ploughedSize' | 'timesRatio'> & { readonly ploughed: string };
/** Bare fallow is a yardstick, not a way to farm: it is told as one figure and compared no further. */
export const isFarmed = ({ ploughed }: Sizes): boolean => ploughed !== 'bare-fallow';
export const losesFarmed = (sizes: Sizes): boolean => isFarmed(sizes) && sizes.ploughedSize === 'whole';
export const canDivide = (sizes: Sizes): boolean => isFarmed(sizes) && sizes.lossSize === 'whole' && sizes.timesRatio >= 1.5;

const handbook = 'wischmeier-smith-1978';
/** Each form is credited to its own book. */
const isNew = ({ slopeBook }: { readonly slopeBook: string }): boolean => slopeBook === 'revised-1997';
const isOld = ({ slopeBook }: { readonly slopeBook: string }): boolean => slopeBook === 'handbook-1978';
const oldSteepness = tex`65.41 \times \q{sineRatio}^2 + 4.56 \times \q{sineRatio} + 0.065`;
const newSteepness = [
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent < 9, formula: tex`10.8 \times \q{sineRatio} + 0.03`, because: 'under 9 %' },
  { formula: tex`16.8 \times \q{sineRatio} - 0.5`, because: 'from 9 %' },
] as const;

const placeSteps: SoilLossSteps = [
  when(
    ({ rainFrom }) => rainFrom === 'year-rain',
    [
      formula('yearRainMm', tex`25.4 \times \q{yearRainIn}`, {
        says: 'The rain of a year in millimeters: the last resort is worked in metric units.',
      }),
      byCase('yearFactorRatio', {
        says: 'The rain factor that one fit for the whole country gives for so much rain.',
        source: 'renard-freimund-1994, annual form',
        ways: [
          { when: ({ yearRainMm }) => yearRainMm < 850, formula: tex`0.0483 \times \q{yearRainMm}^{1.61}`, because: 'under 850 mm' },
          { formula: tex`587.8 - 1.219 \times \q{yearRainMm} + 0.004105 \times \q{yearRainMm}^2`, because: 'from 850 mm' },
        ],
      }),
    ],
  ),
  byCase('erosivityRatio', {
    says: 'How hard the rain beats in a year.',
    source: 'foster-1981, table 2',
    ways: [
      { when: ({ rainFrom }) => rainFrom === 'known', formula: tex`\q{rainFactorRatio}`, because: 'the local figure' },
      {
        formula: tex`\q{yearFactorRatio} \times \frac{0.40468564224}{100 \times 0.3048 \times 2000 \times 4.4482216152605 \times 25.4 / 1000000}`,
        because: 'metric to US units; the fraction is 1 / 17.02',
      },
    ],
  }),
  formula('erodibilityRatio', tex`\q{soilFactorRatio}`, {
    onlyWhen: ({ soilFrom }) => soilFrom === 'known',
    says: 'How easily the soil washes, from the survey.',
  }),
  lookup('erodibilityRatio', {
    onlyWhen: ({ soilFrom, erodibilityList }) => soilFrom === 'texture' && erodibilityList === 'stewart-1975',
    says: 'How easily the soil washes: by texture, straight between the list’s levels of organic matter (0.5, 2 and 4 %).',
    source: 'stewart-1975, soil erodibility by texture',
  }),
  lookup('erodibilityRatio', {
    onlyWhen: ({ soilFrom, erodibilityList }) => soilFrom === 'texture' && erodibilityList === 'stone-hilborn-2012',
    says: 'How easily the soil washes: by texture, with one value to 2 % organic matter and one above.',
    source: 'stone-hilborn-2012, table 2',
  }),
  byCase('groundSlopePercent', {
    says: 'How steep it is.',
    ways: [
      { when: ({ slopeFrom }) => slopeFrom === 'known', formula: tex`\q{slopePercent}` },
      { formula: tex`\frac{\q{riseIn}}{120} \times 100`, because: 'a 10-ft board is 120 inches' },
    ],
  }),
  byCase('runFt', {
    says: 'How far water runs before it gathers or slows.',
    ways: [{ when: ({ lengthFrom }) => lengthFrom === 'known', formula: tex`\q{lengthFt}` }, { formula: tex`\q{stepsCount} \times \q{stepFt}` }],
  }),
  formula('sineRatio', tex`\frac{\q{groundSlopePercent}}{\sqrt{10000 + \q{groundSlopePercent}^2}}`, { says: 'The sine of that slope.' }),
  formula('steepnessRatio', oldSteepness, {
    onlyWhen: isOld,
    says: 'What the steepness does, against a slope of 9 %, by the older form.',
    source: `${handbook}, p. 12`,
  }),
  when(isNew, [
    byCase('steepnessRatio', {
      says: 'What the steepness does, against a slope of 9 %, by the later form.',
      source: 'renard-1997, eq. 4-4 and 4-5; mccool-1987',
      ways: newSteepness,
    }),
    formula('otherSteepnessRatio', oldSteepness, { says: 'By the older form it would be this.', source: `${handbook}, p. 12` }),
  ]),
  byCase('otherSteepnessRatio', {
    onlyWhen: isOld,
    says: 'By the later form it would be this.',
    source: 'renard-1997, eq. 4-4 and 4-5; mccool-1987',
    ways: newSteepness,
  }),
];

/** The older form's exponent goes by steepness alone; the later one's by how much of the washing is done in rills. */
const oldExponent = [
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent < 1, formula: '0.2', because: 'under 1 %' },
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent <= 3, formula: '0.3', because: '1 to 3 %' },
  { when: ({ groundSlopePercent }: Results) => groundSlopePercent < 5, formula: '0.4', because: 'over 3 to under 5 %' },
  { formula: '0.5', because: 'from 5 %' },
] as const;
const exponentSteps = (shows: 'sodExponentRatio' | 'tilledExponentRatio', rills: string, says: string): SoilLossSteps => [
  byCase(shows, { onlyWhen: isOld, says, source: `${handbook}, p. 12 (0.2 from memory)`, ways: oldExponent }),
  formula(shows, tex`\frac{\q{${rills}}}{1 + \q{${rills}}}`, { onlyWhen: isNew, says, source: 'renard-1997, eq. 4-2' }),
];
const slopeFormula = (exponent: string): string => tex`(\frac{\q{runFt}}{72.6})^{\q{${exponent}}} \times \q{steepnessRatio}`;

const slopeSteps: SoilLossSteps = [
  formula('sodRillRatio', tex`0.5 \times \frac{\q{sineRatio} / 0.0896}{3 \times \q{sineRatio}^{0.8} + 0.56}`, {
    onlyWhen: isNew,
    says: 'Under sod: how much washes in rills against the ground between. Half of what tilled ground has.',
    source: 'renard-1997, eq. 4-3; the half is from memory',
  }),
  ...exponentSteps('sodExponentRatio', 'sodRillRatio', 'How strongly length counts under sod.'),
  formula('sodSlopeRatio', slopeFormula('sodExponentRatio'), {
    says: 'Length and steepness together, under sod. The yardstick is a slope of 72.6 ft at 9 %, in both forms.',
    source: `${handbook}, p. 12; renard-1997, chapter 4`,
  }),
  formula('tilledRillRatio', tex`\frac{\q{sineRatio} / 0.0896}{3 \times \q{sineRatio}^{0.8} + 0.56}`, {
    onlyWhen: isNew,
    says: 'The same for tilled ground.',
    source: 'renard-1997, eq. 4-3',
  }),
  ...exponentSteps('tilledExponentRatio', 'tilledRillRatio', 'How strongly length counts when it is tilled.'),
  formula('tilledSlopeRatio', slopeFormula('tilledExponentRatio'), {
    says: 'Length and steepness together, tilled.',
    source: `${handbook}, p. 12; renard-1997, chapter 4`,
  }),
];

const inchYears = (loss: string): string => tex`\frac{0.0254 \times 4046.8564224 / 0.90718474 \times \q{densityGPerCm3}}{\q{${loss}}}`;

const lossSteps: SoilLossSteps = [
  lookup('coverRatio', {
    says: 'What share of bare fallow’s loss this cover lets go: {groundCoverPercent} covered, between the columns of the pasture table {coverBetween}.',
    source: 'scs-agronomy-note-50-1982, table 1; straight lines as in colorado-permit-c-81-008',
  }),
  lookup('otherCoverRatio', { says: 'Read the other way between the columns.', source: 'scs-agronomy-note-50-1982, table 1' }),
  formula('lossTonPerAc', tex`\q{erosivityRatio} \times \q{erodibilityRatio} \times \q{sodSlopeRatio} \times \q{coverRatio}`, {
    says: 'Rain, soil, slope and cover multiplied. Nothing is tilled, so there is no practice factor.',
    source: `${handbook}, eq. 1`,
  }),
  lookup('otherTonPerAc', {
    says: 'The same sums with length and steepness worked by the other form.',
    source: `${handbook}, p. 12; renard-1997, chapter 4`,
  }),
  formula('lowTonPerAc', tex`\frac{\q{lossTonPerAc}}{2}`, { says: 'It is good to a factor of two: half of it,' }),
  formula('highTonPerAc', tex`2 \times \q{lossTonPerAc}`, { says: 'to twice it.' }),
  formula('fallowTonPerAc', tex`\q{erosivityRatio} \times \q{erodibilityRatio} \times \q{tilledSlopeRatio}`, {
    says: 'The same ground tilled and kept bare all year: the handbook’s yardstick. Nobody farms so.',
    source: `${handbook}, definition of C`,
  }),
  lookup('cropCoverRatio', {
    onlyWhen: ({ ploughed }) => ploughed === 'corn-soybeans' || ploughed === 'wheat-fallow' || ploughed === 'wheat-stubble',
    says: 'What share of that the rotation lets go, as a mean of its years. Where the list gives a span, its middle.',
    source: 'stewart-1975, generalized C values (from memory)',
  }),
  lookup('cropCoverRatio', {
    onlyWhen: ({ ploughed }) => ploughed === 'wheat-meadow-corn',
    says: 'What share of that the rotation lets go. It is the handbook’s own example, a year of meadow in four.',
    source: `${handbook}, example for Fountain County, Indiana (from memory)`,
  }),
  formula('cropCoverRatio', tex`\q{ploughedCoverRatio}`, {
    onlyWhen: ({ ploughed }) => ploughed === 'own',
    says: 'What share of that your rotation lets go.',
  }),
  byCase('ploughedTonPerAc', {
    says: 'The plowed ground’s loss: {ploughed}.',
    source: `${handbook}, eq. 1`,
    ways: [
      { when: ({ ploughed }) => ploughed === 'bare-fallow', formula: tex`\q{fallowTonPerAc}`, because: 'bare fallow itself' },
      { formula: tex`\q{fallowTonPerAc} \times \q{cropCoverRatio} \times \q{practiceRatio}` },
    ],
  }),
  formula('timesRatio', tex`\frac{\q{ploughedTonPerAc}}{\q{lossTonPerAc}}`, {
    onlyWhen: canDivide,
    says: 'Plowed against pasture. Rain and soil are the same in both, so this is surer than either figure.',
  }),
  lookup('toleratedTonPerAc', {
    onlyWhen: ({ toleranceFrom }) => toleranceFrom === 'depth',
    says: 'What the soil is said to bear, by how deep roots go.',
    source: 'mccormack-young-1981, guide for T (from memory)',
  }),
  formula('toleratedTonPerAc', tex`\q{surveyTonPerAc}`, {
    onlyWhen: ({ toleranceFrom }) => toleranceFrom === 'known',
    says: 'What the soil is said to bear, from the survey.',
  }),
  formula('loadsCount', tex`\frac{\q{lossTonPerAc} \times \q{areaAc}}{\q{truckTon}}`, { says: 'Off the whole pasture, in truck loads.' }),
  formula('ploughedLoadsCount', tex`\frac{\q{ploughedTonPerAc} \times \q{areaAc}}{\q{truckTon}}`, {
    onlyWhen: losesFarmed,
    says: 'And if it were plowed.',
  }),
  formula('inchYears', inchYears('lossTonPerAc'), {
    says: 'Years in which an inch goes: an inch of soil on an acre weighs about 113 tons times its density.',
    source: 'common practice',
  }),
  formula('ploughedInchYears', inchYears('ploughedTonPerAc'), { onlyWhen: losesFarmed, says: 'And plowed.' }),
  formula('thirtyYearsIn', tex`\frac{30}{\q{inchYears}}`, { says: 'What thirty such years take.' }),
  formula('ploughedThirtyYearsIn', tex`\frac{30}{\q{ploughedInchYears}}`, { onlyWhen: losesFarmed, says: 'And plowed.' }),
];

export const steps: SoilLossSteps = [...placeSteps, ...slopeSteps, ...lossSteps];
