import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import type { Cell, Input } from '../../calculators/kit/inputs.ts';
import { linkName } from '../../calculators/kit/link.ts';
import { exampleOn } from '../../calculators/kit/occurs.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { readForm, rowsIn, startTexts, type Texts, textIn } from '../../calculators/kit/state.ts';
import { textAt } from '../../calculators/kit/textAt.ts';
import { dayOf, isoDay } from '../../calculators/units/printQuantity.ts';
import { units } from '../../calculators/units/units.ts';
import { calculators } from '../support/catalog.ts';
import { guideTexts } from '../support/guideHeads.ts';
import { textsOf } from '../support/randomForms.ts';

// Where a result leads to: both ends are looked at, ours for the names that it gives, theirs for those that it gives them to.

const calculatorOf = (slug: string): Calculator => {
  const found = calculators.find((each) => each.slug === slug);
  if (!found) throw new RangeError(`a lead goes to ${slug}, which is not there`);
  return found;
};
/** An input, or a column of a table, by its name in links. */
function linked({ inputs }: Calculator, name: string): Input | undefined {
  const [head, column] = name.split('.');
  const [, input] = Object.entries(inputs).find(([key, each]) => linkName(key, each) === head) ?? [];
  if (column === undefined || input?.kind !== 'rows') return column === undefined ? input : undefined;
  return Object.entries(input.columns).find(([key, each]) => linkName(key, each) === column)?.[1];
}
/** What a value is: a length, a day, a word. */
function kindOf(calculator: Calculator, name: string): string | undefined {
  const found = calculator.inputs[name] ?? calculator.quantities[name];
  return found && kindIn(found);
}
const kindIn = (found: Input | Cell | Calculator['quantities'][string]): string =>
  found.kind === 'number' ? units[found.unit].dimension : found.kind === 'day' ? 'date' : found.kind;

const leading = calculators.filter(({ leadsTo }) => leadsTo.length > 0);
const each = leading.flatMap((calculator) =>
  calculator.leadsTo.map((lead) => ({ slug: calculator.slug, to: 'guide' in lead ? lead.guide : lead.calculator, calculator, lead })),
);

it('leads on from days of grass', () => {
  expect(leading.map(({ slug }) => slug)).toContain('days-of-grass');
});

describe.each(each)('$slug to $to', ({ calculator, lead }) => {
  if ('guide' in lead) {
    it('is a guide that is there', () => {
      expect(guideTexts.map(({ slug }) => slug)).toContain(lead.guide);
    });
    return;
  }
  const target = calculatorOf(lead.calculator);
  it('gives what it has to names that are there, each of its kind', () => {
    for (const [theirs, ours] of Object.entries(lead.gives ?? {})) {
      const input = linked(target, theirs);
      expect(input, theirs).toBeDefined();
      expect(kindOf(calculator, ours), ours).toBeDefined();
      if (input) expect(kindOf(calculator, ours), `${ours} as ${theirs}`).toBe(kindIn(input));
    }
    for (const [theirs, text] of Object.entries(lead.sets ?? {})) {
      const input = linked(target, theirs);
      expect(input?.kind === 'choice' ? Object.keys(input.options) : input?.kind, theirs).toContain(input?.kind === 'yesNo' ? 'yesNo' : text);
    }
    for (const theirs of lead.asks ?? []) expect(linked(target, theirs), theirs).toBeDefined();
  });
  it('gives its table row by row, and has a word for each of its own or leaves it out', () => {
    const { rows } = lead;
    if (!rows) return;
    const [ours, theirs] = [calculator.inputs[rows.of], linked(target, rows.into)];
    if (ours?.kind !== 'rows' || theirs?.kind !== 'rows') throw new RangeError('a table goes to a table');
    expect(ours.maxRows).toBeLessThanOrEqual(theirs.maxRows);
    const words = ours.columns[rows.words.of];
    const theirWords = linked(target, `${rows.into}.${rows.words.into}`);
    if (words?.kind !== 'choice' || theirWords?.kind !== 'choice') throw new RangeError('words go to words');
    expect(Object.keys(rows.words.as).filter((word) => !Object.hasOwn(words.options, word))).toEqual([]);
    const targets = Object.values(rows.words.as).flatMap((as) => (typeof as === 'string' ? [as] : Object.keys(as)));
    expect(targets.filter((word) => !Object.hasOwn(theirWords.options, word))).toEqual([]);
    expect(ours.columns[rows.words.nearestBy]?.kind).toBe('number');
    for (const [name, column] of Object.entries(rows.columns)) {
      const [from, to] = [ours.columns[column], linked(target, `${rows.into}.${name}`)];
      if (from?.kind !== 'number' || to?.kind !== 'number') throw new RangeError(`${name}: a number goes to a number`);
      expect(units[from.unit].dimension, name).toBe(units[to.unit].dimension);
      expect([from.min >= to.min, from.max <= to.max], `${name} takes all that is given`).toEqual([true, true]);
    }
    for (const [name, texts] of Object.entries(rows.tells ?? {})) {
      const to = linked(target, `${rows.into}.${name}`);
      const theirs = to?.kind === 'choice' ? Object.keys(to.options) : to?.kind === 'yesNo' ? ['yes', 'no'] : [];
      for (const [word, text] of Object.entries(texts)) {
        expect(theirs, name).toContain(text);
        expect(Object.keys(words.options)).toContain(word);
      }
    }
  });
});

/** The same row with what it asks answered: no, and the first of a list. */
const answeredRow = (columns: Readonly<Record<string, Cell>>, row: Readonly<Record<string, string>>) =>
  Object.fromEntries(
    Object.entries(row).map(([name, text]) => {
      const cell = columns[name];
      if (text !== '' || cell === undefined) return [name, text];
      return [name, cell.kind === 'yesNo' ? 'no' : cell.kind === 'choice' ? (Object.keys(cell.options)[0] ?? '') : text];
    }),
  );
/** Opens a lead as a browser does, and answers what it asks: a date sixty days after the last that was given, the first of a list, no. */
function faultsOf(outcome: Outcome): readonly string[] {
  return (outcome.leads ?? []).flatMap(({ page, query }) => {
    const [room, slug = ''] = page.split('/');
    if (room !== 'calculators') return [];
    const target = calculatorOf(slug);
    const { form, notices } = fromLink(target, query);
    const isBlank = (at: string): boolean => textAt(form.this, at) === '';
    const asks = target.inputs;
    const open = readForm(target.inputs, form.this).problems.map(({ at }) => at);
    const answered: Texts = Object.fromEntries(
      Object.entries(form.this).map(([key, text]) => {
        const input = asks[key];
        if (input?.kind === 'rows') return [key, rowsIn(text).map((row) => answeredRow(input.columns, row))];
        if (input?.kind === 'choice' && text === '') return [key, Object.keys(input.options)[0] ?? ''];
        if (text !== '' || input?.kind !== 'date') return [key, text];
        const days = Object.values(form.this)
          .flatMap((each) => (typeof each === 'string' ? [dayOf(each)] : []))
          .filter((each) => each !== undefined);
        const from = dayOf(textIn(form.this['fromDay']));
        return [key, isoDay((from ?? Math.max(...days)) + 60)];
      }),
    );
    const run = runTexts(target, answered);
    return [...notices, ...open.filter((at) => !isBlank(at)), ...('refusals' in run ? run.refusals.map(({ at, say }) => `${at}: ${say}`) : [])].map(
      (fault) => `${page}?${query}: ${fault}`,
    );
  });
}
describe.each(leading)('what $slug leads to', (calculator) => {
  const start = startTexts(calculator.inputs);
  const outcomeOf = (texts: Texts): readonly Outcome[] => {
    const run = runTexts(calculator, texts);
    return 'outcome' in run ? [run.outcome] : [];
  };
  it('opens without a notice or a refusal, on days all through two years', () => {
    const first = dayOf('2027-01-01') ?? 0;
    const days = Array.from({ length: 67 }, (_, at) => first + 11 * at);
    const faults = days.flatMap((day) => outcomeOf(exampleOn(calculator, start, day).texts).flatMap(faultsOf));
    expect(faults).toEqual([]);
  });
  it('opens so from any answers', () => {
    fc.assert(
      fc.property(textsOf(calculator.inputs), (texts) => {
        for (const outcome of outcomeOf(texts)) expect(faultsOf(outcome)).toEqual([]);
      }),
      { seed: 1, numRuns: 60 },
    );
  });
});

describe('the herd goes along', () => {
  const days = calculatorOf('days-of-grass');
  const leadsOf = (query: string) => outcomesOf(query).flatMap(({ leads = [] }) => leads);
  const outcomesOf = (query: string): readonly Outcome[] => {
    const run = runTexts(days, fromLink(days, query).form.this);
    return 'outcome' in run ? [run.outcome] : [];
  };
  const clipped =
    'today=2026-07-01&until=2026-08-15&area=25ac&height=7in&stop-height=3in&density-from=own&density=300lb/ac/in&eaten-from=own&own-eaten=60pct&stock.kind=cow-nursing&stock.count=40&stock.weight=1250lb&stock.intake=2.5pct&can-go=30';
  it('to hay, from the day to plan on', () => {
    const hay = leadsOf(clipped).find(({ page }) => page === 'calculators/hay-to-grass');
    expect(hay?.query).toBe('from=2026-07-11&to=&on-hand=&herd.stock=cow&herd.count=40&herd.weight=1250lb&herd.intake=2.5pct&herd.births=');
  });
  it('to hay, with no births of those that have none, and a question for the others', () => {
    const kinds = clipped.replace(
      /&stock\.kind.*&can-go/,
      '&stock.kind=cow-dry,bull,stocker,calf,ewe-nursing,other&stock.count=9,1,9,9,9,9&stock.weight=1000lb,1800lb,600lb,300lb,150lb,500lb&stock.intake=2pct,2pct,2pct,2pct,2pct,2pct&can-go',
    );
    const hay = leadsOf(kinds).find(({ page }) => page === 'calculators/hay-to-grass');
    expect(hay?.query).toContain('&herd.stock=cow,bull,growing,calf,ewe,other&');
    expect(hay?.query).toMatch(/&herd\.births=,no,no,no,,$/);
  });
  it('to selling, with the head that must leave today', () => {
    expect(leadsOf(clipped).find(({ page }) => page === 'calculators/feed-or-sell')?.query).toBe('herd=40&sell=28');
  });
  it('to dates, with the day until which it must last and what the herd eats', () => {
    expect(leadsOf(clipped).find(({ page }) => page === 'calculators/decision-dates')?.query).toBe(
      'today=2026-07-01&end=2026-08-15&herd=1250lb/d&steps.day=2026-07-11&steps.step=look',
    );
    // A plan lies in one year.
    expect(leadsOf(clipped.replace('until=2026-08-15', 'until=2027-01-15')).map(({ page }) => page)).not.toContain('calculators/decision-dates');
  });
  it('to water, with growing cattle by their weight, and says what has no word there', () => {
    const water = leadsOf(
      `${clipped}&stock.kind=stocker,ewe-dry,other&stock.count=30,60,4&stock.weight=710lb,160lb,900lb&stock.intake=2.5pct,2pct,2pct`.replace(
        /&stock\.kind=cow-nursing&stock\.count=40&stock\.weight=1250lb&stock\.intake=2\.5pct/,
        '',
      ),
    ).find(({ page }) => page === 'calculators/stock-water');
    expect(water).toMatchObject({ query: 'herd.stock=growing-800,ewe&herd.count=30,60', leftOut: ['Other'] });
  });
  it('keeps selling apart where no cows are the herd', () => {
    const pages = leadsOf(clipped.replace('cow-nursing', 'ewe-nursing')).map(({ page }) => page);
    expect(pages).not.toContain('calculators/feed-or-sell');
    expect(pages).toContain('calculators/hay-to-grass');
  });
  it('goes nowhere but to water and the guide while growth keeps up', () => {
    const pages = leadsOf('growth=300lb/ac/d').map(({ page }) => page);
    expect(pages).toEqual(['calculators/stock-water', 'guides/pulling-stock-early']);
  });
  it('opens there as rows of theirs', () => {
    const { query = '' } = leadsOf(clipped).find(({ page }) => page === 'calculators/hay-to-grass') ?? {};
    const { form, named } = fromLink(calculatorOf('hay-to-grass'), query);
    expect(rowsIn(form.this['herd'])).toHaveLength(1);
    // What nobody has given is asked: until when, whether there is hay, and whether they calve in that time.
    for (const at of ['toDay', 'onHand', 'herd.0.hasBirths']) expect(textAt(form.this, at), at).toBe('');
    expect([...named].toSorted()).toEqual(['fromDay', 'herd', 'onHand', 'toDay']);
  });
});
