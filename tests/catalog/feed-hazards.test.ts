import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/feed-hazards/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';

const order = ['under-every-limit', 'limited', 'harm-named', 'do-not-feed'];
const verdictOf = (query: string): number => order.indexOf(String(resultAt(runQuery(definition, query), 'verdict')));
const feedAlone = 'water-nitrate=not-tested&water-sulfate=not-tested&water-salts=not-tested&crop=other';

describe('feed-hazards', () => {
  it.each([
    ['forage-nitrate=no3-n&slip-unit=ppm&nitrate-ppm=', [0, 500, 700, 1400, 2000, 2100, 3500, 4000, 9000]],
    ['forage-nitrate=not-tested&prussic-acid=tested&prussic-ppm=', [0, 400, 500, 999, 1000, 3000]],
  ])('never gets milder as the slip rises: %s', (start, amounts) => {
    const verdicts = amounts.map((amount) => verdictOf(`${feedAlone}&${start}${amount}`));
    expect(verdicts).toEqual([...verdicts].sort((one, other) => one - other));
    expect(new Set(verdicts).size).toBeGreaterThan(1);
  });

  it('reads what the slip leaves open the strictest way', () => {
    const ppmOf = (query: string) => Number(resultAt(runQuery(definition, `nitrate-ppm=3000&${query}`), 'nitrogenPpm'));
    for (const form of ['no3', 'no3-n', 'kno3'])
      expect(ppmOf('forage-nitrate=not-said&basis=not-said')).toBeGreaterThanOrEqual(ppmOf(`forage-nitrate=${form}&basis=as-fed`));
    expect(runQuery(definition, 'pregnant=not-sure').computed).toEqual(runQuery(definition, 'pregnant=yes').computed);
  });

  it('counts the water on top of the feed, so it leaves less room for it', () => {
    const shareAt = (mgPerL: number) => Number(resultAt(runQuery(definition, `slip-nitrate=${mgPerL}`), 'mixSharePercent'));
    expect(shareAt(60)).toBeLessThan(shareAt(5));
    expect(Number(resultAt(runQuery(definition, 'forage-nitrate=not-tested'), 'feedG'))).toBe(0);
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
