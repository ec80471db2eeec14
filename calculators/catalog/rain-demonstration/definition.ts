import { caution, defineCalculator } from '../../kit/define.ts';
import { shown, shownWhen } from '../../kit/shown.ts';
import { byCase, formula, lookup, tabulate, tex, when } from '../../kit/steps.ts';
import { refusals } from './cautions.ts';
import { compute, runoffGap } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';

const isRead = ({ jars }: { readonly jars: string }): boolean => jars === 'read';
const hasRun = ({ jars, ran }: { readonly jars: string; readonly ran: boolean }): boolean => jars === 'read' && ran;
/** Less than this is measured in milliliters. */
const leastQt = 0.5;
/** More than two people should lift. */
const twoPeopleLb = 100;
const isBuilt = ({ headFrom }: { readonly headFrom: string }): boolean => headFrom === 'jar';

export default defineCalculator({
  slug: 'rain-demonstration',
  version: 1,
  title: 'Rain on two trays: water, holes and time for a demonstration',
  inputs,
  refusals,
  compute,
}).describe({
  question: 'How do I set up a demonstration, and what should people see?',
  lead: 'Rain the same water on two trays cut from two managements. This gives the water to pour, the holes, the time, and what to look for. It ranks the trays; it measures nothing about your pasture.',
  searchWords:
    'rainfall demonstration, rain simulator, field day, soil health demonstration, runoff jars, sod tray, drip pan, infiltration demonstration, school',
  first: ['rainIn', 'lengthIn', 'widthIn', 'cover', 'runoffMl'],
  groups: [
    { title: 'The trays', inputs: ['soilIn', 'riseIn', 'alike'], summary: '{soilIn} of soil, the upper end {riseIn} higher, {alike}' },
    {
      title: 'The drip head',
      inputs: ['wantedInPerHr', 'headFrom', 'holesCount', 'jar', 'otherMl', 'fillS', 'spoonS'],
      summary: '{wantedInPerHr} wanted, {headFrom}, {#holesCount} holes, {jar} in {fillS}, {otherMl}, a tablespoon in {spoonS}',
    },
    { title: 'The jars', inputs: ['jars', 'ran', 'firstRunS', 'throughMl'], summary: '{jars}, {ran} after {firstRunS}, {throughMl} came through' },
  ],
  readings: ['ran', 'firstRunS', 'runoffMl', 'throughMl'],
  handout: ['pourQt', 'rainMin', 'needHolesCount', 'shouldRun', 'runoffPercent', 'throughPercent'],
  quantities,
  results: [
    { of: 'pourQt', said: 'of water to pour', gap: ['less to pour', 'more to pour'], when: ({ pourQt }) => pourQt >= leastQt },
    { of: 'pourGal', when: ({ pourGal }) => pourGal >= 0.25 },
    { of: 'pourMl', said: 'of water to pour', gap: ['less to pour', 'more to pour'] },
    { of: 'rainMin', when: ({ rainMin }) => rainMin >= 0.5 },
    shown('rateInPerHr', 'needHolesCount'),
    { of: 'holeGapIn', when: ({ headFrom }) => headFrom === 'one-hole' },
    // Once the jars are read they tell what happened; what was to be expected is no result.
    shownWhen((values) => !isRead(values), 'shouldRun', 'shouldSoak'),
    { of: 'tells' },
    { of: 'firstRunIn', when: hasRun },
    { of: 'runoffPercent', gap: ['less of the water ran off', 'more of the water ran off'], between: runoffGap, when: isRead },
    { of: 'throughPercent', when: isRead },
    { of: 'heldPercent', when: (values) => isRead(values) && values.heldMl >= 0 },
    { of: 'trayLb', when: ({ trayLb }) => trayLb >= 5 },
    shown('slopePercent', 'otherRains'),
  ],
  steps: [
    formula('pourGal', tex`\frac{\q{lengthIn} \times \q{widthIn} \times \q{rainIn}}{231}`, {
      says: 'Water for {rainIn} of rain on a tray. A gallon is 231 cubic inches.',
      source: 'common practice',
    }),
    formula('pourQt', tex`4 \times \q{pourGal}`, { says: 'In quarts.' }),
    formula('pourMl', tex`\q{lengthIn} \times \q{widthIn} \times \q{rainIn} \times 2.54^3`, {
      says: 'In milliliters. A cubic inch is 2.54³ of them.',
    }),
    byCase('timedMl', {
      says: 'The water that was timed.',
      source: 'common practice',
      ways: [
        { when: ({ headFrom }) => headFrom === 'one-hole', formula: tex`\frac{231 \times 2.54^3}{256}`, because: 'a gallon has 256 tablespoons' },
        { when: ({ jar }) => jar === 'pint', formula: tex`\frac{231 \times 2.54^3}{8}`, because: 'a gallon has 8 pints' },
        { when: ({ jar }) => jar === 'quart', formula: tex`\frac{231 \times 2.54^3}{4}`, because: 'a gallon has 4 quarts' },
        { formula: tex`\q{otherMl}` },
      ],
    }),
    byCase('timedInPerHr', {
      says: 'As a depth over the tray in an hour, which has 3,600 seconds.',
      source: 'irrigation-repair-rate, precipitation rate formula',
      ways: [
        { when: isBuilt, formula: tex`\frac{3600 \times \q{timedMl}}{2.54^3 \times \q{lengthIn} \times \q{widthIn} \times \q{fillS}}` },
        { formula: tex`\frac{3600 \times \q{timedMl}}{2.54^3 \times \q{lengthIn} \times \q{widthIn} \times \q{spoonS}}` },
      ],
    }),
    byCase('holeInPerHr', {
      says: 'What one hole adds to it.',
      ways: [{ when: isBuilt, formula: tex`\frac{\q{timedInPerHr}}{\q{holesCount}}` }, { formula: tex`\q{timedInPerHr}` }],
    }),
    formula('holesExactCount', tex`\frac{\q{wantedInPerHr}}{\q{holeInPerHr}}`, { says: 'Holes for the rain that you want.' }),
    lookup('needHolesCount', { says: 'Rounded up to a whole hole.', source: 'common practice' }),
    formula('holeGapIn', tex`\sqrt{\frac{\q{lengthIn} \times \q{widthIn}}{\q{needHolesCount}}}`, {
      onlyWhen: ({ headFrom }) => headFrom === 'one-hole',
      says: 'Each hole serves its own square of the tray; the side of that square is the gap.',
    }),
    byCase('rateInPerHr', {
      says: 'How hard the head rains.',
      ways: [
        { when: isBuilt, formula: tex`\q{timedInPerHr}`, because: 'as it was timed' },
        { formula: tex`\q{needHolesCount} \times \q{holeInPerHr}`, because: 'as it will with that many holes' },
      ],
    }),
    formula('rainMin', tex`\frac{60 \times \q{rainIn}}{\q{rateInPerHr}}`, {
      says: 'Minutes for the depth.',
      source: 'irrigation-repair-rate, the measuring can method',
    }),
    tabulate('otherRains', {
      says: 'The same for other depths.',
      formulas: {
        fallQt: tex`4 \times \frac{\q{lengthIn} \times \q{widthIn} \times \q{fallIn}}{231}`,
        fallMin: tex`\frac{60 \times \q{fallIn}}{\q{rateInPerHr}}`,
      },
    }),
    formula('slopePercent', tex`\frac{100 \times \q{riseIn}}{\q{lengthIn}}`, { says: 'Slope.' }),
    formula('trayLb', tex`\frac{110 \times \q{lengthIn} \times \q{widthIn} \times \q{soilIn}}{1728}`, {
      says: 'Weight, with wet soil at 110 lb a cubic foot of 1,728 cubic inches. The tray itself comes on top.',
      source: 'common practice',
    }),
    when(isRead, [
      formula('heldMl', tex`\q{pourMl} - \q{runMl} - \q{downMl}`, { says: 'In neither jar: held in the soil, or spilled.' }),
      formula('runoffPercent', tex`\frac{100 \times \q{runMl}}{\q{pourMl}}`, { says: 'Share that ran off.' }),
      formula('throughPercent', tex`\frac{100 \times \q{downMl}}{\q{pourMl}}`, { says: 'Share that came out below.' }),
      formula('heldPercent', tex`\frac{100 \times \q{heldMl}}{\q{pourMl}}`, { says: 'And the rest.' }),
    ]),
    byCase('firstRunIn', {
      onlyWhen: hasRun,
      says: 'Rain that was on by the time it ran.',
      ways: [
        { when: ({ firstRunS, rainMin }) => firstRunS <= 60 * rainMin, formula: tex`\frac{\q{rateInPerHr} \times \q{firstRunS}}{3600}` },
        { formula: tex`\q{rainIn}`, because: 'the rain had stopped by then' },
      ],
    }),
  ],
  cautions: [
    caution(() => true, {
      lead: 'Trays rank, they don’t measure: say “more” and “less”.',
      say: 'Trays rank, they don’t measure. The walls, the cut sod and drops that fall a few feet are not a pasture in a storm. Say “more” and “less”, never “so many inches”.',
      source: 'common practice',
    }),
    caution(() => true, {
      lead: 'Stop at the first thunder, and get everybody inside.',
      life: true,
      say: 'Stop at the first thunder. Get everybody into a building or a hard-topped car, and stay there until half an hour after the last.',
      source: 'common practice',
    }),
    caution(() => true, {
      lead: 'Use plastic jars where children or bare feet are about.',
      say: 'Use plastic jars where children or bare feet are about. Keep glass off the edge of the table, and cords and plugs away from the wet.',
      source: 'common practice',
    }),
    caution(() => true, {
      lead: 'Tie the stand down on firm, level ground and rope it off.',
      say: 'Set the stand on firm, level ground and tie it or weigh it down. Rope off a step around it. Wet grass is slick. Have people wash their hands after touching soil.',
      source: 'common practice',
    }),
    caution(({ trayLb }) => trayLb > twoPeopleLb, {
      lead: 'Wet, this tray is more than two people should lift.',
      life: true,
      say: 'Wet, this tray is more than two people should lift. Take a smaller one or less soil, or build it on the stand and leave it there.',
      source: 'common practice',
    }),
    caution(({ trayLb }) => trayLb > 45 && trayLb <= twoPeopleLb, {
      lead: 'A wet tray of this size takes two people to carry.',
      say: 'A wet tray of this size takes two people. Lift with the legs, carry it level, and load it before you wet it.',
      source: 'common practice',
    }),
    caution((values) => isBuilt(values) && Math.abs(values.rateInPerHr - values.wantedInPerHr) > 0.15 * values.wantedInPerHr, {
      lead: 'The head rains harder or softer than you want: change its holes.',
      say: 'The head does not rain as hard as you want, or harder. Stop up or add holes, or keep the water in it lower or higher. Then time the jar again.',
      source: 'common practice',
    }),
    caution(({ rateInPerHr }) => rateInPerHr > 6, {
      lead: 'Rain this hard is rare, and even good sod sheds part of it.',
      say: 'Rain this hard is rare, and even good sod sheds part of it. People who know their own storms may not believe the tray.',
      source: 'common practice',
    }),
    caution((values) => isRead(values) && !values.alike, {
      lead: 'The trays differ in more than cover: they don’t show what grazing does.',
      say: 'The trays differ in more than the cover. Don’t show these jars as what grazing does. Set both up alike and pour again.',
      source: 'common practice',
    }),
    caution((values) => isRead(values) && values.cover === 'rested-sod' && values.runoffPercent > 50, {
      lead: 'Most of it ran off good sod: look for gaps, a dry mat or soaked ground.',
      say: 'Most of it ran off good sod. Look for a gap along the wall, a dry mat that sheds water at first, or ground that was soaked already. Tell people what you see; don’t explain it away.',
      source: 'common practice',
    }),
    caution((values) => isRead(values) && values.heldMl < 0, {
      lead: 'The jars hold more than was put on: that much is reading error.',
      say: 'The jars hold a little more than was put on. That much is reading error; two trays that close count as alike.',
      source: 'common practice',
    }),
  ],
  limits: [
    'It cannot tell how much rain your pasture takes. A ring in the ground, a gauge and a hard storm can: see “Infiltration rate from a ring test” and “Runoff from rainfall depth”.',
    'One pair of trays is only one pair. Sods cut a step apart differ. Cut two or three of each, or call it a picture and not a proof.',
    'Two trays that differ by less than a tenth of the water are alike.',
    'The words on what people should see are what usually happens. Yours may do otherwise, and then yours is right.',
    'Dry sod can shed its first water, soaked sod sheds all of it, and a thin slab drains faster than a field. Wet both trays alike the evening before.',
    'Drops from a head a few feet up hit softer than rain, so bare soil seals less here than it does outdoors.',
  ],
  note: (values, show) => {
    const set = `${show('rainIn')} of rain on a tray of ${show('lengthIn')} by ${show('widthIn')} is ${show(values.pourQt < leastQt ? 'pourMl' : 'pourQt')}; at ${show('rateInPerHr')} it takes ${values.rainMin < 0.5 ? 'less than a minute' : show('rainMin')}.`;
    const cover = values.cover === 'other' ? 'This tray' : show('cover');
    if (!isRead(values)) return `${set} ${cover}: not poured yet.`;
    const first = values.ran ? `it ran after ${show('firstRunIn')} of rain, and ${show('runoffPercent')} ran off` : 'none ran off';
    const told = values.alike ? 'This ranks the trays and measures nothing.' : 'The trays were not set up alike, so it tells nothing.';
    return `${set} ${cover}: ${first}; ${show('throughPercent')} came out below. ${told}`;
  },
  wholes: [{ parts: ['runoffPercent', 'throughPercent', 'heldPercent'] }],
  picture: {
    kind: 'face',
    tray: { rainIn: 'rainIn', soilIn: 'soilIn', poured: 'pourMl', ranOff: 'runMl', cameThrough: 'downMl', stayed: 'inSoilMl' },
  },
  sources: ['irrigation-repair-rate', 'mccalla-1984', 'thurow-1988'],
  topic: 'tailgate',
  order: 50,
  guides: ['showing-soil-to-a-crowd', 'where-rain-goes'],
});
