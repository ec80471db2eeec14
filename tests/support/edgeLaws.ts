import fc from 'fast-check';
import { expect, it } from 'vitest';
import { resultAt } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Edge, EdgeList } from '../../calculators/kit/edges.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { differencesOf, isHairApart, judgingWords, limitsOf, messagesOf, runTyped, saidIn, type Typed, textsTyped, typedOn } from './edgeParts.ts';
import { textsOf } from './randomForms.ts';

const start = (say: string): string => `${say.slice(0, 40).replace(/\s+\S*$/, '')}`;
const nameOf = (edge: Edge): string =>
  edge.kind === 'turns' ? `${edge.path}: ${Object.keys(edge.sides).join(', ')}` : `${edge.kind}: ${edge.kind === 'shown' ? edge.name : edge.words}`;

/** What no edge holds, each with the line to add. */
function missing(calculator: Calculator, { edges }: EdgeList): readonly string[] {
  const file = `calculators/catalog/${calculator.slug}/edges.ts`;
  const told = messagesOf(calculator);
  const messages = told.flatMap(({ kind, say }) => {
    const wanted = told.filter((other) => other.say === say).length;
    const found = edges.filter((edge) => (edge.kind === 'said' || edge.kind === 'always') && say.startsWith(edge.words)).length;
    return found >= wanted
      ? []
      : [`${kind} “${start(say)} …” has no edge. Add to ${file}: edge('${start(say)}', { raised: '…', silent: '…' }), or always('${start(say)}').`];
  });
  const words = judgingWords(calculator).flatMap(([path, quantity]) => {
    const held = edges.flatMap((edge) => (edge.kind === 'turns' && edge.path === path ? Object.keys(edge.sides) : []));
    const free = Object.keys(quantity.words).filter((word) => !held.includes(word));
    return free.length === 0
      ? []
      : [`${calculator.slug}: “${path}” can be ${free.join(', ')} without an edge. Add to ${file}: turns('${path}', { '${free[0]}': '…', … }).`];
  });
  return [...messages, ...words];
}

/** Every caution, refusal and class is raised just past its limit and silent just before; the limits of the fields stand where they are said to. */
export function itHoldsItsEdges(calculator: Calculator, list: EdgeList): void {
  it('has an edge for every caution, every refusal and every class', () => {
    expect(missing(calculator, list), `npm run edges -- ${calculator.slug} proposes them`).toEqual([]);
  });
  it('takes numbers from where to where its edges say', () => {
    expect(list.limits, `mend \`limits\` in calculators/catalog/${calculator.slug}/edges.ts, or the field`).toEqual(limitsOf(calculator.inputs));
  });
  // The season runs its years twice for one, on a machine that may be busy.
  it.each(list.edges.map((edge) => ({ name: nameOf(edge), edge })))('$name', { timeout: 30_000 }, ({ edge }) => itHolds(calculator, edge));
}

function itHolds(calculator: Calculator, edge: Edge): void {
  const expectOpens = ({ query }: Typed): void => expect(fromLink(calculator, query).notices, query).toEqual([]);
  if (edge.kind === 'turns') {
    const sides = Object.entries(edge.sides).map(([word, side]) => ({ word, typed: typedOn(edge, side) }));
    for (const { word, typed } of sides) {
      expectOpens(typed);
      const run = runTyped(calculator, typed);
      expect('outcome' in run ? resultAt(run.outcome, edge.path) : saidIn(run), typed.query).toBe(word);
    }
    expect(sides.length, 'needs two words or more').toBeGreaterThan(1);
    for (const [index, side] of sides.entries()) if (index > 0) expectNeighbors(calculator, edge, sides[index - 1]?.typed, side.typed);
    return;
  }
  if (edge.kind === 'shown' || edge.kind === 'told') {
    const [is, isNot] = Object.values(edge.sides).map((side) => typedOn(edge, side));
    if (!is || !isNot) throw new RangeError('an edge needs two sides');
    const gives = (typed: Typed): boolean => {
      expectOpens(typed);
      const run = runTyped(calculator, typed);
      expect('outcome' in run ? [] : saidIn(run), `must compute: ${typed.query}`).toEqual([]);
      if (!('outcome' in run)) return false;
      const { note, ranges, shown } = run.outcome;
      return edge.kind === 'shown' ? shown.includes(edge.name) : [note, ...Object.values(ranges)].some((told) => told.includes(edge.words));
    };
    expect([gives(is), gives(isNot)], `${is.query}, then ${isNot.query}`).toEqual([true, false]);
    expectNeighbors(calculator, edge, is, isNot);
    return;
  }
  const messages = new Set(messagesOf(calculator).map(({ say }) => say));
  const meant = [...messages].filter((say) => say.startsWith(edge.words));
  expect(meant, `“${edge.words}” must begin one caution or refusal`).toHaveLength(1);
  if (edge.kind === 'always') {
    const typed = typedOn(edge, '');
    expectOpens(typed);
    expect(saidIn(runTyped(calculator, typed))).toContain(meant[0]);
    for (const texts of fc.sample(textsOf(calculator.inputs), { seed: 1, numRuns: calculator.runs === 'long' ? 8 : 60 })) {
      const run = runTexts(calculator, texts);
      if ('outcome' in run) expect(saidIn(run), 'said to stand always').toContain(meant[0]);
    }
    return;
  }
  const [raised, silent] = [typedOn(edge, edge.sides.raised), typedOn(edge, edge.sides.silent)];
  for (const typed of [raised, silent]) expectOpens(typed);
  expect(saidIn(runTyped(calculator, raised)), `raised: ${raised.query}`).toContain(meant[0]);
  const run = runTyped(calculator, silent);
  // Just short of one refusal, another may hold; a field that cannot be read shows nothing.
  const isRefusal = calculator.refusals.some(({ say }) => say === meant[0]);
  const stops = 'outcome' in run ? [] : saidIn(run).filter((say) => !isRefusal || !messages.has(say));
  expect(stops, `silent must compute: ${silent.query}`).toEqual([]);
  expect(saidIn(run), `silent: ${silent.query}`).not.toContain(meant[0]);
  expectNeighbors(calculator, edge, raised, silent);
}

function expectNeighbors(calculator: Calculator, edge: Edge, one: Typed | undefined, other: Typed): void {
  if (!one) throw new RangeError('expectNeighbors needs two sides');
  const [first, ...more] = differencesOf(calculator.inputs, textsTyped(calculator, one), textsTyped(calculator, other));
  expect([first?.at, ...more.map(({ at }) => at)], `${one.query} and ${other.query} must differ in one field`).toHaveLength(1);
  if (!first) throw new RangeError(`${one.query} and ${other.query} are the same`);
  expect(isHairApart(first.field, first.texts, edge.within), `${first.at}: ${first.texts.join(' and ')} are too far apart to hold a limit`).toBe(
    true,
  );
}
