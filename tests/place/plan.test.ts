import { describe, expect, it } from 'vitest';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { dayOf, isoDay } from '../../calculators/units/printQuantity.ts';
import sheet from '../../content/sheets/drought-plan.json' with { type: 'json' };
import { keptResult } from '../../src/place/visit/keptResult.ts';
import { type PlanFacts, planOf } from '../../src/place/visit/plan.ts';
import { calculatorOf } from '../support/catalog.ts';
import { aPlace } from './aPlace.ts';
import { aResult } from './aVisit.ts';

/** A calculation of the real form, as it is kept at the place. */
function kept(slug: string, link: string, more: Parameters<typeof aResult>[0] = {}) {
  const calculator = calculatorOf(slug);
  const ran = runTexts(calculator, fromLink(calculator, link).form.this, 'us');
  if (!('outcome' in ran)) throw new RangeError(`${slug} refuses ${link}`);
  const { id, rev, past, changedBy, changedAt } = aResult();
  const result = keptResult({
    begun: { id, rev, past, changedBy, changedAt },
    calculator,
    link,
    outcome: ran.outcome,
    other: null,
    titles: ['This', 'That'],
    between: '',
    system: 'us',
    placeId: 'p1',
    visitId: 'v1',
    pastureIds: [],
    keptDay: '2026-03-02',
    edition: '0.1.0',
    sources: [],
    stamp: '',
  });
  return { ...result, id: `${slug}-1`, ...more };
}
const facts = (more: Partial<PlanFacts> = {}): PlanFacts => ({
  place: aPlace(),
  results: [],
  todayDay: dayOf('2026-03-02') ?? Number.NaN,
  system: 'us',
  decisionDates: calculatorOf('decision-dates'),
  ...more,
});
const place = aPlace({
  growth: { startMonth: 'apr', bestMonth: 'jun', quitMonth: 'oct' },
  stationMonthsIn: [1, 1, 2, 3, 4, 5, 3, 2, 3, 2.5, 2, 1],
  hay: {
    stacks: [
      { id: 'a', baleCount: 40, baleLb: 1100 },
      { id: 'b', baleCount: 10, baleLb: 1000 },
    ],
  },
  water: [
    { id: 'w', name: 'Mill pond' },
    { id: 'x', name: 'Moss well' },
  ],
  pastures: [
    ...aPlace().pastures,
    { id: 'hill', name: 'Hill', areaAc: 60, isCounted: false, paddocks: [] },
    { id: 'pens', name: 'Pens', areaAc: 3, use: 'yards', isCounted: false, paddocks: [] },
  ],
});

describe('the plan on one page', () => {
  it('writes only what the sheet has a line for', () => {
    const labels = sheet.parts.flatMap((part) => part.fields?.map(({ label }) => label) ?? []);
    const rows = sheet.parts.flatMap((part) => (Array.isArray(part.rows) ? part.rows : []));
    const plan = planOf(facts({ place, results: [kept('carrying-capacity', ''), kept('decision-dates', '')] }));
    for (const label of plan.fields.keys()) expect(labels).toContain(label);
    for (const name of plan.lines.keys()) expect(rows).toContain(name);
    const dates = sheet.parts.find((part) => part.rows === 5);
    for (const cells of plan.dates) expect(cells.length).toBeLessThan(dates?.columns?.length ?? 0);
  });
  it('has the place’s rain of the months that grow, its hay, water and spare ground', () => {
    const { fields, lines } = planOf(facts({ place }));
    // 3 + 4 + 5 + 3 + 2 + 3 + 2.5
    expect(fields.get('Normal rain, and from which month to which')).toBe('Apr to Oct: 22.5 in, medians of the station');
    expect(fields.get('Written on this date')).toBe('Mar 2, 2026');
    // 40 of 1,100 lb and 10 of 1,000 lb: 54,000 lb.
    expect(lines.get('Hay, tons')?.[0]).toBe('27.0');
    expect(lines.get('Stock water')).toEqual(['Mill pond and Moss well']);
    expect(lines.get('Grass to fall back on')?.[0]).toBe('Hill, 60 ac');
  });
  it('takes a year’s rain where no month is told, and months that go over the turn of the year', () => {
    const rainOf = (more: Parameters<typeof aPlace>[0]) =>
      planOf(facts({ place: aPlace(more) })).fields.get('Normal rain, and from which month to which');
    expect(rainOf({ yearRainIn: 34 })).toBe('a year’s rain: 34 in');
    expect(rainOf({})).toBeUndefined();
    // Nov to Feb: 2 + 1 + 1 + 1
    expect(rainOf({ growth: { startMonth: 'nov', quitMonth: 'feb' }, stationMonthsIn: place.stationMonthsIn })).toContain('Nov to Feb: 5 in');
  });
  it('says no tons where one stack is not weighed', () => {
    const plan = planOf(facts({ place: { ...place, hay: { stacks: [...(place.hay?.stacks ?? []), { id: 'c', baleCount: 5 }] } } }));
    expect(plan.lines.get('Hay, tons')?.[0]).toBe('');
    expect(plan.missing.map(({ what }) => what)).toContain('Tons of hay');
  });
  it('has the dates, rain, grass and heads of the plan that was kept, as the form itself tells them', () => {
    const result = kept('decision-dates', '');
    const calculator = calculatorOf('decision-dates');
    const ran = runTexts(calculator, fromLink(calculator, '').form.this, 'us');
    if (!('outcome' in ran)) throw new RangeError('refused');
    const rows = ran.outcome.values['plan'];
    if (!Array.isArray(rows)) throw new RangeError('no plan');
    const { dates } = planOf(facts({ results: [result] }));
    expect(dates.map(([, rain, days]) => [rain, days])).toEqual(
      rows.map(({ underIn, underDays }) => [underIn.toFixed(1), String(Math.round(underDays))]),
    );
    expect(dates.map(([day]) => day)).toEqual(['May 15, 2026', 'Jun 15, 2026', 'Jul 10, 2026', 'Aug 1, 2026', 'Aug 15, 2026']);
    expect(dates.map(([, , , then]) => then)).toEqual([
      'Look and write down, nothing more',
      'Sell dry, open and late cows: 5',
      'Wean early and take the calves off: 38',
      'Sell ewes and lambs: 30',
      'Buy hay',
    ]);
    expect(rows.map(({ planDay }) => isoDay(planDay))).toEqual(result.days.map(({ day }) => day));
  });
  it('has the heads of the latest own count, with its day', () => {
    const result = kept('carrying-capacity', '');
    const label = 'Head to winter in a normal year, and in a poor one';
    const [shown] = result.shown.filter((each) => each.label === 'Head of the first kind that the place carries, normal year');
    expect(shown?.range).toContain('in a poor year');
    expect(planOf(facts({ results: [result] })).fields.get(label)).toBe(`${shown?.text}; ${shown?.range} (worked out Mar 2, 2026)`);
    const later = { ...result, id: 'later', keptDay: '2026-03-05' };
    expect(planOf(facts({ results: [later, result] })).fields.get(label)).toContain('Mar 5, 2026');
  });
  it('takes no figure of an example, and says what is missing', () => {
    const stamp = 'Example, not your numbers';
    const plan = planOf(facts({ results: [kept('decision-dates', '', { stamp }), kept('carrying-capacity', '', { stamp })] }));
    expect(plan.dates).toEqual([]);
    expect([...plan.fields.keys()]).toEqual(['Place', 'Written on this date']);
    expect(plan.missing.map(({ view, form }) => view ?? form)).toEqual([
      'season',
      'carrying-capacity',
      'decision-dates',
      'feed',
      'water',
      'days-of-grass',
    ]);
    // The invented place is an example as a whole, and says so.
    const demo = planOf(facts({ place: aPlace({ isDemo: true }), results: [kept('decision-dates', '', { stamp })] }));
    expect(demo.fields.get('Place')).toBe('Home place (invented example)');
    expect(demo.dates).toHaveLength(5);
  });
  it('has somebody to talk to, the office’s line first', () => {
    const line = { who: 'County line', reach: 'call 555-0199', source: 'common practice' };
    const { lines } = planOf(facts({ office: { name: 'Example County office, 555-0100', lines: [line] } }));
    expect(lines.get('Someone to talk to')?.[0]).toMatch(/555-0199.*988/);
    expect(lines.get('Farm program office, insurance')).toEqual(['Example County office, 555-0100']);
    expect(planOf(facts()).lines.get('Someone to talk to')?.[0]).toContain('988');
  });
});
