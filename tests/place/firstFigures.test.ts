import { describe, expect, it } from 'vitest';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { asText } from '../../src/place/visit/asText.ts';
import { outgoing } from '../../src/place/visit/audience.ts';
import { firstFigures } from '../../src/place/visit/firstFigures.ts';
import { keptResult } from '../../src/place/visit/keptResult.ts';
import { calculatorOf } from '../support/catalog.ts';
import { aResult, facts } from './aVisit.ts';

const sides = ['Overgrazed', 'Rested'] as const;
/** A comparison as it is kept at the place. */
function compared(slug: string, link: string, titles: readonly [string, string] = sides, between = '') {
  const calculator = calculatorOf(slug);
  const { form } = fromLink(calculator, link);
  const [mine, theirs] = [runTexts(calculator, form.this, 'us'), runTexts(calculator, form.that ?? form.this, 'us')];
  if (!('outcome' in mine) || !('outcome' in theirs)) throw new RangeError(`${slug} refuses ${link}`);
  const { id, rev, past, changedBy, changedAt } = aResult();
  return keptResult({
    ...{ begun: { id, rev, past, changedBy, changedAt }, calculator, link, outcome: mine.outcome, other: theirs.outcome, titles, between },
    ...{ system: 'us', placeId: 'p1', visitId: 'v1', pastureIds: [], keptDay: '2026-06-20', edition: '0.1.0', sources: [], stamp: '' },
  });
}
const jars = 'cover=grazed-short&jars=read&runoff=2600ml&that.cover=rested-sod&that.first-run=600s&that.runoff=300ml';
const said = (result: Parameters<typeof firstFigures>[0]) => firstFigures(result).map(({ label, text }) => `${label} ${text}`);

describe('the cautions of a kept comparison', () => {
  const titles = ['Moss’s ground', 'Rested'] as const;
  const rings = 'bore=6in&moisture=dry&rings.first=9min,8min,10min&rings.pours=once,once,once&rings.end=gone,gone,gone';
  const kept = compared('ring-test', `${rings}&that.rings.pours=twice,twice,twice&that.rings.second=19min,18min,20min`, titles);
  const alone = kept.cautions.filter(({ say }) => say.includes('Dry ground drinks the first inch'));
  it('name the side that they are about, where it is one of two', () => {
    expect(alone.map(({ say, lead }) => [say.slice(0, 28), lead.slice(0, 19)])).toEqual([['Moss’s ground: Dry ground dr', 'Moss’s ground: Pour']]);
    expect(kept.cautions.map(({ say }) => say).filter((say) => say.includes('Call 811'))).toEqual([expect.stringMatching(/^Wear safety glasses/)]);
  });
  it('name it to no office', () => {
    const of = facts({ results: [{ ...kept, pastureIds: ['high'] }] });
    expect(asText(outgoing(of, 'producer'))).toContain('Moss’s ground: Dry ground');
    const office = asText(outgoing(of, 'office'));
    expect(office).toContain(': Dry ground drinks');
    expect(office).not.toContain('Moss');
  });
});
describe('the first figures of a kept comparison', () => {
  it('stand side by side, those that differ before those that are the same', () => {
    expect(said(compared('rain-demonstration', jars))).toEqual([
      'Overgrazed: Rain that was on when it began to run 0.13 in',
      'Rested: Rain that was on when it began to run 0.50 in',
      'Overgrazed: Ran off the top 55 %',
      'Rested: Ran off the top 6 %',
    ]);
  });
  it('begin with the leading one where it differs, be it words', () => {
    const [mine, theirs] = firstFigures(compared('slake-test', 'samples.seen=by-5,by-5,by-30&that.samples.seen=most,most,most'));
    expect([mine?.label, theirs?.label]).toEqual([expect.stringMatching(/^Overgrazed: /), expect.stringMatching(/^Rested: /)]);
    expect(mine?.text).not.toMatch(/\d/);
    expect(mine?.text).not.toBe(theirs?.text);
  });
  it('belong together where both sides have one name', () => {
    const two = said(compared('rain-demonstration', jars, ['Low bench', 'Low bench']));
    expect(two.map((line) => line.match(/[\d.]+ (?:in|%)$/)?.[0])).toEqual(['0.13 in', '0.50 in', '55 %', '6 %']);
  });
  it('are those at the top where both are the same, where nothing pairs, and of one side', () => {
    expect(said(compared('rain-demonstration', 'that=same'))[1]).toBe('Rested: Water to put on each tray 5.0 qt');
    const shown = ['a', 'b', 'c', 'd', 'e'].map((label) => ({ label, text: label }));
    expect(firstFigures({ shown, sides: ['One', 'Other'] })).toEqual(shown.slice(0, 4));
    expect(firstFigures({ shown })).toEqual(shown.slice(0, 4));
  });
  it('go out in a note, of both sides', () => {
    const text = asText(outgoing(facts({ results: [compared('rain-demonstration', jars)] }), 'producer'));
    expect(text).toContain('Overgrazed: Ran off the top: 55 %');
    expect(text).toContain('Rested: Ran off the top: 6 %');
    expect(text).not.toContain('gallons');
  });
});

describe('a kept comparison', () => {
  it('says what lies between, and in whose ground a caution holds', () => {
    const link = 'samples.seen=by-5,by-5,by-30&that.samples.seen=most,most,most,half,most,most';
    const { note, cautions } = compared('slake-test', link, sides, '4.5 classes higher on that side; 3.8 to 5.1, 95 times in 100');
    expect(note).toContain('\nRested beside Overgrazed: 4.5 classes higher on that side; 3.8 to 5.1, 95 times in 100.');
    const says = cautions.map(({ say }) => say);
    expect(says.find((say) => say.includes('Fewer than six samples'))).toMatch(/^Overgrazed: /);
    expect(says.find((say) => say.includes('clear plastic'))).toMatch(/^In front of people/);
  });
});
