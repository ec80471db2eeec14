import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { CaseList } from '../../calculators/kit/cases.ts';
import type { Calculator, Outcome } from '../../calculators/kit/define.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { askedNow, drawnTogether, inputNameOf, isManaged } from '../../calculators/kit/screen.ts';
import { canCompare, readForm, rowsIn, startTexts } from '../../calculators/kit/state.ts';
import { summaryOf, tellInput } from '../../calculators/kit/summary.ts';
import { calculators, loadFrom } from '../support/catalog.ts';
import { root } from '../support/files.ts';

// What a page says before anybody opens anything: few questions, short words. All of it stands in one file for reading by eye.

const most = { asks: 5, fields: 8, lead: 75, range: 45, summary: 110, option: 24, saidWords: 4 };

/** Outcomes of the example and of every case. */
async function outcomesOf(calculator: Calculator): Promise<readonly Outcome[]> {
  const cases = await loadFrom<CaseList>(calculator.slug, 'cases.ts');
  const forms = [startTexts(calculator.inputs), ...(cases?.cases ?? []).map(({ query }) => fromLink(calculator, query).form.this)];
  return forms.flatMap((texts) => {
    const { values, problems } = readForm(calculator.inputs, texts);
    const run = problems.length > 0 ? undefined : calculator.run(values);
    return run && 'outcome' in run ? [run.outcome] : [];
  });
}
/** Results that can lead: all up to the first that always applies. */
function leading({ results, quantities }: Calculator, outcomes: readonly Outcome[]): readonly string[] {
  const scalars = results.filter(({ of }) => quantities[of]?.kind !== 'rows').map(({ of }) => of);
  return [...new Set(outcomes.flatMap(({ shown }) => scalars.find((of) => shown.includes(of)) ?? []))];
}

const lines: string[] = [];
describe.each(calculators)('$slug', (calculator) => {
  const { inputs, layout, results, cautions, slug } = calculator;
  const texts = startTexts(inputs);

  it('asks one to five questions at first, and none of them is hidden with the example’s answers', () => {
    expect(layout.first.length).toBeGreaterThan(0);
    // The counts of a tally are one question: one set of buttons.
    expect(
      drawnTogether(
        inputs,
        layout.first.map(([asked = '']) => asked),
      ).length,
    ).toBeLessThanOrEqual(most.asks);
    const open = askedNow(inputs, layout, texts);
    expect(open.length, `${open}`).toBe(layout.first.length);
    for (const slot of layout.first)
      expect(
        slot.filter((asked) => open.includes(asked)),
        `of ${slot.join(' or ')} exactly one shows`,
      ).toHaveLength(1);
    const fields = open.map((asked) => (asked.includes('.') ? rowsIn(texts[inputNameOf(asked)]).length : 1));
    expect(fields.reduce((sum, count) => sum + count, 0)).toBeLessThanOrEqual(most.fields);
  });
  it('has a place for every input, and one only', () => {
    const whole = layout.first.flat().filter((asked) => !asked.includes('.'));
    const grouped = layout.groups.flatMap((group) => group.inputs);
    const everywhere = [...whole, ...grouped];
    expect(everywhere.toSorted()).toEqual([...new Set(everywhere)].toSorted());
    expect(new Set(everywhere)).toEqual(new Set(Object.keys(inputs)));
  });
  it('tells each group in a line, and each option in it in a few letters', () => {
    for (const group of layout.groups) {
      const { text } = summaryOf(inputs, group, texts, 'us');
      lines.push(`${slug} | group | ${group.title}: ${text}`);
      expect(text.length, text).toBeLessThanOrEqual(most.summary);
      expect(text, 'every name in a summary is an input').not.toMatch(/[{}]/);
      for (const [, name = ''] of (group.summary ?? '').matchAll(/\{#?(\w+)\}/g)) {
        expect(group.inputs, `${group.title} tells what it holds`).toContain(name);
        const input = inputs[name];
        if (input?.kind !== 'choice') continue;
        for (const { label, short = label, shortMetric = [] } of Object.values(input.options))
          for (const each of [short, shortMetric].flat()) expect(each.length, `${name}: “${each}”`).toBeLessThanOrEqual(most.option);
      }
    }
    for (const [key, input] of Object.entries(inputs)) {
      if (input.kind !== 'rows') continue;
      const told = tellInput(input, texts[key], texts, 'us');
      lines.push(`${slug} | rows | ${input.label}: ${told}`);
      expect(told, 'every name in a row’s line is a column').not.toMatch(/[{}?]/);
      expect(told.length, told).toBeLessThanOrEqual(most.summary);
    }
  });
  it('leads each caution with one short sentence', () => {
    const leads = cautions.map(({ lead }) => lead);
    for (const { lead, life } of cautions) {
      lines.push(`${slug} | ${life ? 'LIFE' : 'lead'} | ${lead}`);
      expect(lead.length, lead).toBeLessThanOrEqual(most.lead);
      expect(lead).toMatch(/^[“A-Z0-9].*[.”!?]$/);
    }
    expect(new Set(leads).size, 'no two cautions lead alike').toBe(new Set(cautions.map(({ say }) => say)).size);
  });
  it('says what its figure is in at most four words, and its range in a line of a phone', async () => {
    const outcomes = await outcomesOf(calculator);
    for (const name of leading(calculator, outcomes)) {
      const told = results.find(({ of }) => of === name);
      lines.push(`${slug} | said | ${name}: ${told?.said}`);
      expect(told?.said, `${name} can come first: it needs \`said\``).toBeDefined();
      expect(told?.said?.split(' ').length).toBeLessThanOrEqual(most.saidWords);
      if (canCompare(inputs) && calculator.quantities[name]?.kind === 'number') {
        expect(told?.gap, `${name} can come first in a comparison: it needs \`gap\``).toBeDefined();
        lines.push(`${slug} | gap | ${name}: ${told?.gap?.join(' / ')}`);
      }
      for (const { shown, shorts } of outcomes) {
        if (!shown.includes(name) || shorts[name] === undefined) continue;
        expect(shorts[name].length, shorts[name]).toBeLessThanOrEqual(most.range);
      }
    }
    const first = outcomes[0];
    const lead = results.find(({ of }) => first?.shown.includes(of) && calculator.quantities[of]?.kind !== 'rows')?.of ?? '';
    lines.push(`${slug} | range | ${first?.shorts[lead] ?? '(none)'}`);
    lines.push(`${slug} | note | ${first?.note}`);
  });
  it('lets another management be set beside it where an input belongs to people', () => {
    expect(canCompare(inputs)).toBe(Object.values(inputs).some(isManaged));
  });
  it('hands out at most six results', () => {
    expect(calculator.handout.length).toBeLessThanOrEqual(6);
    for (const name of calculator.handout) expect(results.map(({ of }) => of)).toContain(name);
  });
  it('puts it all into one list for reading', () => {
    const path = join(root, 'node_modules/.cache/tests/screens.txt');
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, lines.join('\n'));
    expect(lines.length).toBeGreaterThan(0);
  });
});
