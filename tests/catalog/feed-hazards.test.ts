import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/feed-hazards/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { printName } from '../../calculators/kit/print.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { nitrogen, readingOf, saysIn } from './feedSlip.ts';

const order = ['under-every-limit', 'limited', 'harm-named', 'only-mixed', 'do-not-feed'];
const verdictOf = (query: string): number => order.indexOf(String(resultAt(runQuery(definition, query), 'verdict')));
const feedAlone = 'water-nitrate=not-tested&water-sulfate=not-tested&water-salts=not-tested&crop=other';

describe('feed-hazards', () => {
  it.each([
    ['forage-nitrate=no3-n&slip-unit=ppm&nitrate-ppm=', [0, 500, 700, 1400, 2000, 2100, 3500, 4000, 9000]],
    ['forage-nitrate=not-tested&prussic-acid=tested&prussic-ppm=', [0, 150, 200, 400, 500, 999, 1000, 3000]],
  ])('never gets milder as the slip rises: %s', (start, amounts) => {
    const verdicts = amounts.map((amount) => verdictOf(`${feedAlone}&${start}${amount}`));
    expect(verdicts).toEqual([...verdicts].sort((one, other) => one - other));
    expect(new Set(verdicts).size).toBeGreaterThan(1);
  });

  it('takes ppm and percent by their signs, and no percent for ppm', () => {
    const slip = (text: string) => resultAt(runQuery(definition, `forage-nitrate=no3-n&basis=dry&${text}`), 'nitrogenPpm');
    for (const text of ['1,600 ppm', '1600 mg/kg', '0.16 %', '0.16 percent']) expect(slip(`nitrate-ppm=${text}`), text).toBe(1600);
    const inPercent = 'slip-unit=percent&nitrate=1600 ppm';
    expect(slip(inPercent)).toBe(1600);
    // Its link keeps the sign: bare it would be 1,600 percent.
    expect(toLink(definition, fromLink(definition, inPercent).form)).toContain('nitrate=1600ppm');
    // 0.8 percent is 8,000 ppm, which kills; read as 0.8 ppm it was under every limit.
    for (const text of ['nitrate-ppm=0.8', 'other-feed=tested&other-ppm=0.02', 'prussic-acid=tested&prussic-ppm=0.05'])
      expect(() => slip(text), text).toThrow('most likely percent');
    expect(slip('nitrate-ppm=0')).toBe(0);
    // A question that is not asked stops nobody.
    expect(slip('nitrate-ppm=1600&other-feed=none&other-ppm=0.02&prussic-ppm=0.05')).toBe(1600);
  });

  it('reads what the slip leaves open the strictest way', () => {
    const ppmOf = (query: string) => Number(resultAt(runQuery(definition, `nitrate-ppm=3000&${query}`), 'nitrogenPpm'));
    for (const form of ['no3', 'no3-n', 'kno3'])
      expect(ppmOf('forage-nitrate=not-said&basis=not-said')).toBeGreaterThanOrEqual(ppmOf(`forage-nitrate=${form}&basis=as-fed`));
    expect(runQuery(definition, 'pregnant=not-sure').computed).toEqual(runQuery(definition, 'pregnant=yes').computed);
  });

  it('says once in the note that the feed is under the limits, and that it clears nothing', () => {
    const times = (query: string, words: RegExp): number => runQuery(definition, query).note.match(words)?.length ?? 0;
    // Alone, and where the water leads.
    for (const query of ['nitrate-ppm=200', 'nitrate-ppm=200&water-sulfate=so4&slip-sulfate=2000']) {
      expect(times(query, /that clears nothing/gi), query).toBe(1);
      expect(times(query, /the feed’s nitrate/gi), query).toBeLessThanOrEqual(1);
    }
    expect(runQuery(definition, 'nitrate-ppm=200&water-sulfate=so4&slip-sulfate=2000').note).toContain('The feed’s nitrate: under the limits');
  });

  it('starts with nothing chosen for the reader: a bare 1,600 is never read as nitrate, and nothing untested is a number', () => {
    const { values, cautions, note, shown } = runQuery(definition, 'nitrate-ppm=1600');
    expect(values['forageNitrate']).toBe('not-said');
    expect(values['basis']).toBe('not-said');
    expect(Number(values['nitrogenPpm'])).toBeGreaterThanOrEqual(1600);
    expect(cautions.map(({ say }) => say).join(' ')).toMatch(/word is not known, so its number was read the strictest way/);
    expect(cautions.map(({ say }) => say).join(' ')).toMatch(/Dry or as fed is not known/);
    for (const untested of ['waterNitrate', 'waterSulfate', 'waterSalts', 'prussicAcid']) expect(values[untested], untested).toBe('not-tested');
    expect(values['otherFeed']).toBe('untested');
    for (const name of ['waterNitrogenMgPerL', 'sulfateMgPerL', 'saltsMgPerL', 'prussicPpm', 'asFeedPpm']) expect(shown).not.toContain(name);
    expect(note).not.toMatch(/water/i);
    expect(note).toMatch(/read the strictest way/);
  });

  it('tells one figure in the three ways in which laboratories report it', () => {
    // Worked out by hand from the atomic weights (IUPAC 2021): NO3 = 4.4268, KNO3 = 7.2182 times the nitrogen.
    const { values, note } = runQuery(definition, nitrogen(1600));
    const told = (name: string) => printName(definition, values, name, 'us');
    expect([told('nitrogenPpm'), told('ionPpm'), told('potassiumNitratePpm')]).toEqual(['1,600', '7,083', '11,549']);
    expect(note).toMatch(/1,600 ppm NO3-N .* 7,083 ppm nitrate or 11,549 ppm potassium nitrate/);
    expectWithin(Number(resultAt(runQuery(definition, 'forage-nitrate=no3&nitrate-ppm=1600&basis=dry'), 'nitrogenPpm')), 361.4, 5e-2);
  });

  // ServiTech table 1: 700 to 1,400 half and 1,400 to 2,100 a quarter for pregnant ruminants, 1,400 to 2,100 half for others.
  // Clemson: over 2,000 not for pregnant animals, others 35 percent, 3,500 to 4,000 a quarter, over 4,000 do not feed.
  it.each([
    [699, 'yes', 'feed-under'],
    [700, 'yes', 'feed-half-pregnant'],
    [1399, 'yes', 'feed-half-pregnant'],
    [1400, 'yes', 'feed-quarter-pregnant'],
    [1600, 'yes', 'feed-quarter-pregnant'],
    [1600, 'not-sure', 'feed-quarter-pregnant'],
    [1999, 'yes', 'feed-quarter-pregnant'],
    [2000, 'yes', 'feed-none-pregnant'],
    [700, 'no', 'feed-warned'],
    [1399, 'no', 'feed-warned'],
    [1400, 'no', 'feed-half'],
    [1999, 'no', 'feed-half'],
    [2000, 'no', 'feed-third'],
    [3500, 'no', 'feed-quarter'],
    [3999, 'no', 'feed-quarter'],
    [4000, 'no', 'feed-none'],
    [4000, 'yes', 'feed-none'],
  ])('reads %i ppm, pregnant %s, as %s', (ppm, pregnant, reading) => {
    expect(resultAt(runQuery(definition, nitrogen(ppm, `&pregnant=${pregnant}`)), 'feedReading')).toBe(reading);
  });

  it('leads with the share for these animals and what feeding it alone is, in headline, caution and note', () => {
    const query = nitrogen(1600, '&pregnant=yes&other-feed=none');
    const { shown, note } = runQuery(definition, query);
    expect(shown[0]).toBe('reading');
    expect(readingOf(query)).toBe('feed-quarter-pregnant');
    const share = /no more than a quarter .*pregnant stock.*four times that/i;
    expect(note).toMatch(share);
    expect(note.indexOf('quarter')).toBeLessThan(30);
    expect(note).toMatch(/Clemson’s and Dairyland’s print half/);
    const caution = saysIn(query);
    expect(caution).toMatch(/pregnant stock.*no more than a quarter.*Fed alone it is four times that/);
    // Both of the other tables print half at this level.
    expect(caution).toMatch(/Two other tables, Clemson University’s and Dairyland’s, print half/);
  });

  it('names no laboratory and no grade in what leads', () => {
    const { reading, feedReading } = definition.quantities;
    const words = [reading, feedReading].flatMap((each) => (each?.kind === 'word' ? Object.values(each.words) : []));
    expect(words.length).toBeGreaterThan(20);
    const names = /clemson|dairyland|servi-?tech|laborator|american|dakota|montana|purdue|kansas|council|medium|moderate|very high|“/i;
    expect(words.filter((each) => names.test(each))).toEqual([]);
    for (const ppm of [500, 1600, 2500, 5000]) {
      const lead = runQuery(definition, nitrogen(ppm)).note.split('. ')[0] ?? '';
      expect(lead).not.toMatch(names);
      expect(lead.length).toBeGreaterThan(20);
    }
  });

  it('never lets a list from memory lead over one that was read', () => {
    // 25 mg/L: only the row that was not seen again warns; the feed’s limit was read.
    const query = nitrogen(1600, '&pregnant=yes&water-nitrate=no3-n&slip-nitrate=25');
    expect(readingOf(query)).toBe('feed-quarter-pregnant');
    expect(resultAt(runQuery(definition, query), 'verdict')).toBe('harm-named');
    // With nothing else tested the warning is not lost.
    expect(readingOf('forage-nitrate=not-tested&water-nitrate=no3-n&slip-nitrate=25')).toBe('water-nitrate-warned');
    // South Dakota State, read: use caution from 100, potentially toxic over 300; Montana, read: none over 100.
    expect(readingOf('forage-nitrate=not-tested&water-nitrate=no3-n&slip-nitrate=101')).toBe('water-nitrate-not');
  });

  // The least deadly dose, in nitrate nitrogen for 100 lb: 22.7 g (0.05 percent of weight, ARS Logan) is 3.14 g if potassium nitrate and 5.12 if nitrate;
  // more than 30 g of potassium nitrate (Prewitt and Merilan) is more than 4.16. Worked out by hand at 2 percent of weight eaten: 1,600 ppm 1.45 g, 4,000 3.63, 30,000 27.2.
  it.each([
    [1600, '1.45', false],
    [3300, '2.99', false],
    [3308, '3.00', true],
    [4000, '3.63', true],
    // 3.18 percent nitrate killed 17 cows (Texas diagnostic laboratory, 1 April 2019): 7,184 ppm of its nitrogen, if the ion.
    [7184, '6.52', true],
    [30_000, '27.22', true],
  ])('says at %i ppm, eaten alone, whether the day’s amount is near deadly', (ppm, gPerCwt, isSaid) => {
    const query = nitrogen(ppm, '&other-feed=none&weight=1000lb&eaten=20lb/d');
    const run = runQuery(definition, query);
    expect(printName(definition, run.values, 'gPerCwt', 'us')).toMatch(new RegExp(`^${gPerCwt.replace('.', '\\.')}`));
    expect(/3 to 5 grams for each 100 lb/.test(saysIn(query))).toBe(isSaid);
    // University of Nebraska–Lincoln, G1779: twice as much over 24 to 48 hours as over 4 to 6.
    expect(/Speed matters.*half the nitrate/.test(saysIn(query))).toBe(isSaid);
  });

  // Kansas State, eUpdate 302: over 500 ppm dry or 200 as is.
  it.each([
    ['dry', 499, 'prussic-warned'],
    ['dry', 500, 'prussic-toxic'],
    ['as-fed', 199, 'prussic-warned'],
    ['as-fed', 200, 'prussic-toxic'],
    ['not-said', 200, 'prussic-toxic'],
    // Purdue: over 0.1 percent of dry matter.
    ['dry', 1000, 'prussic-not'],
  ])('reads prussic acid on the basis %s, %i ppm, as %s', (basis, ppm, reading) => {
    const query = `forage-nitrate=not-tested&prussic-acid=tested&basis=${basis}&feed-form=hay&dry-matter=88pct&prussic-ppm=${ppm}`;
    expect(readingOf(query)).toBe(reading);
    expect(saysIn(query)).toMatch(/500 ppm dry, or 200 as is.*Always ask/);
  });

  it('says what the crop alone asks for where nothing was tested, and calls nothing read', () => {
    const untested = 'forage-nitrate=not-tested';
    const { shown, note } = runQuery(definition, untested);
    expect(readingOf(untested)).toBe('nothing-tested');
    for (const name of ['leastHeightIn', 'killingFrostDays', 'lightFrostDays', 'afterDroughtDays', 'ensiledDays']) expect(shown).toContain(name);
    expect(saysIn(untested)).toMatch(/Prussic acid kills within minutes/);
    expect(saysIn(`${untested}&crop=other`)).toMatch(/sweetclover/);
    for (const told of [note, saysIn(untested)]) expect(told).not.toMatch(/Under the limits|At least one list/);
    expect(note).toMatch(/^Nothing was tested; that clears nothing: send in a sample/);
    // Horses have no list here, and the refusal says what kills them.
    expect(() => runQuery(definition, 'animals=horses')).toThrow(/off sorghum.*prussic acid kills within minutes.*sweetclover/);
  });

  it('calls no hay and no silage of a prussic crop cleared, and names the conflict', () => {
    for (const crop of ['sorghum-sudangrass', 'sudangrass', 'sorghum', 'indiangrass']) {
      const says = saysIn(`crop=${crop}`);
      expect(says).toMatch(/Hay and silage of these crops are no clearance.*not zero.*40 to 60 percent.*Arkansas/);
      expect(resultAt(runQuery(definition, `crop=${crop}`), 'ensiledDays')).toBe(56);
    }
    // Ohio State (Hay and Forage Grower 1613): indiangrass under 8 inches.
    expect(resultAt(runQuery(definition, 'crop=indiangrass'), 'leastHeightIn')).toBe(8);
    expect(saysIn('crop=other')).not.toMatch(/no clearance/);
  });

  it.each([
    // Montana: total dissolved solids from 5,000 not for pregnant and lactating animals, over 10,000 do not use.
    ['water-salts=dissolved-solids&slip-salts=900', 'under-every-limit'],
    ['water-salts=dissolved-solids&slip-salts=5000', 'water-salts-warned'],
    ['water-salts=dissolved-solids&slip-salts=10000', 'water-salts-not'],
    // North Dakota: 1,000 for grown cattle, 500 for calves. South Dakota: over 3,000 acutely toxic.
    ['water-sulfate=so4&slip-sulfate=999', 'under-every-limit'],
    ['water-sulfate=so4&slip-sulfate=1000', 'water-sulfate-warned'],
    ['water-sulfate=so4&slip-sulfate=500&animals=calves', 'water-sulfate-warned'],
    ['water-sulfate=so4&slip-sulfate=3000', 'water-sulfate-not'],
  ])('leads with water where only water was tested: %s', (query, reading) => {
    expect(readingOf(`forage-nitrate=not-tested&${query}`)).toBe(reading);
  });

  it('reads a number as it stands there', () => {
    // 3,098 and 8,853 ppm as NO3 are 699.8 and 1,999.9 ppm of nitrogen (14.007 of 62.004 parts), told as 700 and 2,000.
    const as = (ppm: number) => runQuery(definition, `forage-nitrate=no3&basis=dry&pregnant=yes&nitrate-ppm=${ppm}`);
    for (const [ppm, told, reading] of [
      [3096, '699', 'feed-under'],
      [3098, '700', 'feed-half-pregnant'],
      [3099, '700', 'feed-half-pregnant'],
      [8851, '1,999', 'feed-quarter-pregnant'],
      [8853, '2,000', 'feed-none-pregnant'],
      [8854, '2,000', 'feed-none-pregnant'],
    ] as const) {
      const { values } = as(ppm);
      expect([printName(definition, values, 'nitrogenPpm', 'us'), values['feedReading']], `${ppm}`).toEqual([told, reading]);
    }
    // 44 mg/L of NO3 is 9.94 of nitrogen and stands there as 10, where a list begins to warn; 4,999.6 of salts as 5,000.
    const water = runQuery(definition, 'forage-nitrate=not-tested&water-nitrate=no3&slip-nitrate=44');
    expect(printName(definition, water.values, 'waterNitrogenMgPerL', 'us')).toMatch(/^10 /);
    expect(water.values['reading']).toBe('water-nitrate-warned');
    expect(readingOf('forage-nitrate=not-tested&water-salts=dissolved-solids&slip-salts=4999.6')).toBe('water-salts-warned');
    expect(saysIn('water-salts=dissolved-solids&slip-salts=4999.6')).toMatch(/Too salty for pregnant/);
  });

  it('names polio where sulfate is high', () => {
    const saysAt = (mgPerL: number) => saysIn(`water-sulfate=so4&slip-sulfate=${mgPerL}`);
    expect(saysAt(1000)).toMatch(/polio \(polioencephalomalacia\)/);
    expect(saysAt(999)).not.toMatch(/polio/);
  });

  it('never clears anything: “safe” stands only inside a list’s quotation, and the first caution always stands', () => {
    const ours = (text: string) => text.replace(/“[^”]*”/g, '');
    for (const query of ['', 'nitrate-ppm=0', 'nitrate-ppm=0&slip-nitrate=0&slip-sulfate=0&slip-salts=0']) {
      const { cautions, note } = runQuery(definition, query);
      expect(cautions[0]?.say).toMatch(/clears/);
      expect(ours(note)).not.toMatch(/safe/i);
    }
    const words = Object.values(definition.quantities).flatMap((each) =>
      [each, ...(each.kind === 'rows' ? Object.values(each.columns) : [])].flatMap((one) => (one.kind === 'word' ? Object.values(one.words) : [])),
    );
    const said = [...words, ...definition.limits, ...definition.cautions.map(({ say }) => say), ...definition.steps.map(({ says }) => says)];
    // What is from memory stands without quotation marks, but under a list's name.
    expect(said.map(ours).filter((text) => /safe/i.test(text))).toEqual([]);
  });
});
