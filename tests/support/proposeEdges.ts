import fc from 'fast-check';
import type { CaseList } from '../../calculators/kit/cases.ts';
import { resultAt } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Cell } from '../../calculators/kit/inputs.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { readCell } from '../../calculators/kit/read.ts';
import { monthsIn, type RowTexts, readForm, rowsIn, startTexts, type Text, type Texts, textIn } from '../../calculators/kit/state.ts';
import { dayOf, isoDay } from '../../calculators/units/printQuantity.ts';
import { readQuantity } from '../../calculators/units/readQuantity.ts';
import { isBare, type UnitName } from '../../calculators/units/units.ts';
import { type Difference, differencesOf, isHairApart, judgingWords, limitsOf, messagesOf, saidIn } from './edgeParts.ts';
import { plainNumber, textsOf } from './randomForms.ts';

/** What a form gives, as one word: `raised` or `silent`, or a class; nothing where it does not compute. */
type State = (texts: Texts) => string | undefined;
interface Pair {
  readonly at: string;
  /** The form whose state was looked for, then the one that the change of one field leads to. */
  readonly forms: readonly [Texts, Texts];
  readonly states: readonly [string, string];
  /** Does the field hold a size, and do the two stand a hair apart? */
  readonly isSized: boolean;
  readonly isTight: boolean;
}

/** One field of a form, set to another text. */
function withText(texts: Texts, at: string, text: string): Texts {
  const [key = '', index, column] = at.split('.');
  const now = texts[key];
  if (index === undefined) return { ...texts, [key]: text };
  if (column === undefined) return { ...texts, [key]: monthsIn(now).map((each, month) => (month === Number(index) ? text : each)) };
  return { ...texts, [key]: rowsIn(now).map((row, place): RowTexts => (place === Number(index) ? { ...row, [column]: text } : row)) };
}
const withRows = (texts: Texts, key: string, list: Text): Texts => ({ ...texts, [key]: list });

/** As near to `base` as it comes without leaving its state. */
function nearTo(calculator: Calculator, state: State, base: Texts, from: Texts): Texts {
  const kept = state(from);
  let here = from;
  const tryIt = (next: Texts): boolean => {
    if (state(next) !== kept) return false;
    here = next;
    return true;
  };
  for (const [key, input] of Object.entries(calculator.inputs)) {
    if (!tryIt(withRows(here, key, base[key] ?? '')) && input.kind === 'rows') {
      const goal = rowsIn(base[key]);
      for (let count = rowsIn(here[key]).length; count > goal.length; count--)
        if (!tryIt(withRows(here, key, rowsIn(here[key]).slice(0, count - 1)))) break;
      for (let count = rowsIn(here[key]).length; count < goal.length; count++)
        if (!tryIt(withRows(here, key, [...rowsIn(here[key]), ...goal.slice(count, count + 1)]))) break;
    }
  }
  for (let round = 0; round < 4; round++) {
    let moved = false;
    for (const { at, field, texts } of differencesOf(calculator.inputs, here, base))
      if (field.kind !== 'row') moved = tryIt(withText(here, at, texts[1])) || moved;
    if (!moved) break;
  }
  return here;
}

const numberIn = (unit: UnitName, value: number): string => `${plainNumber(value)}${isBare(unit) ? '' : unit}`;
const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

/** Two short decimals, one on each side of where the state changes between two numbers. */
function tighten(
  field: Difference['field'],
  texts: Difference['texts'],
  stateWith: (text: string) => string | undefined,
): Difference['texts'] | undefined {
  const unit = field.kind === 'number' || field.kind === 'month' ? field.unit : undefined;
  const sizeIn = (text: string): number => {
    if (field.kind === 'date') return dayOf(text) ?? Number.NaN;
    const reading = readQuantity(text, unit ?? 'in');
    return reading.is === 'value' ? reading.value : Number.NaN;
  };
  const textOf = (value: number): string => (unit === undefined ? isoDay(Math.round(value)) : numberIn(unit, value));
  const kept = stateWith(texts[0]);
  const isWhole = field.kind === 'date' || (field.kind === 'number' && field.whole === true);
  let [inside, outside] = [sizeIn(texts[0]), sizeIn(texts[1])];
  for (let step = 0; step < 60 && Math.abs(inside - outside) > (isWhole ? 1 : 1e-9 * Math.max(1, Math.abs(inside))); step++) {
    const middle = isWhole ? Math.round((inside + outside) / 2) : (inside + outside) / 2;
    if (middle === inside || middle === outside) break;
    if (stateWith(textOf(middle)) === kept) inside = middle;
    else outside = middle;
  }
  if (isWhole) return [textOf(inside), textOf(outside)];
  const limit = (inside + outside) / 2;
  const isAt = (value: number): boolean => Math.abs(value - limit) <= 1e-6 * Math.max(1, Math.abs(limit));
  const turn = outside > inside ? 1 : -1;
  for (let digits = 0; digits <= 8; digits++) {
    const unitStep = 10 ** -digits;
    const middle = rounded(Math.round(inside / unitStep) * unitStep, digits);
    for (const from of [middle - turn * unitStep, middle, middle + turn * unitStep, middle - 2 * turn * unitStep]) {
      const ends = [rounded(from, digits), rounded(from + turn * unitStep, digits)] as const;
      const pair = [textOf(ends[0]), textOf(ends[1])] as const;
      const other = stateWith(pair[1]);
      // A limit that is a round number shows at once; any other is met within 1 %.
      const isNear = ends.some(isAt) ? isHairApart(field, pair) : unitStep <= Math.abs(limit) / 100;
      if (isNear && stateWith(pair[0]) === kept && other !== kept && other !== undefined) return pair;
    }
  }
  return undefined;
}

/** Every pair of neighbors that one form of some state leads to, on its way to the base. */
function pairsFrom(calculator: Calculator, state: State, base: Texts, found: Texts): readonly Pair[] {
  const kept = state(found);
  const near = nearTo(calculator, state, base, found);
  if (kept === undefined) return [];
  return differencesOf(calculator.inputs, near, base).flatMap((difference): readonly Pair[] => {
    const { at, field, texts } = difference;
    if (field.kind === 'row') {
      const key = at.split('.')[0] ?? '';
      const [mine, goal] = [rowsIn(near[key]), rowsIn(base[key])];
      const other = withRows(near, key, mine.length > goal.length ? mine.slice(0, -1) : [...mine, ...goal.slice(mine.length, mine.length + 1)]);
      const turned = state(other);
      return turned === undefined || turned === kept ? [] : [{ at: key, forms: [near, other], states: [kept, turned], isSized: true, isTight: true }];
    }
    const stateWith = (text: string): string | undefined => state(withText(near, at, text));
    const isSized = field.kind === 'number' || field.kind === 'month' || field.kind === 'date';
    const pair = isSized ? tighten(field, texts, stateWith) : texts;
    const ends = pair ?? texts;
    const turned = stateWith(ends[1]);
    if (turned === undefined || turned === kept) return [];
    return [
      {
        at: at.replace(/\.\d+\./, '.'),
        forms: [withText(near, at, ends[0]), withText(near, at, ends[1])],
        states: [kept, turned],
        isSized,
        isTight: !isSized || pair !== undefined,
      },
    ];
  });
}

/** A form in the units of its fields and in few digits, which reads better than a random one. */
function tidied(calculator: Calculator, texts: Texts): Texts {
  const cell = (field: Cell, text: string): string => {
    const reading = readCell(field, text);
    if (field.kind !== 'number' || !('value' in reading)) return text;
    const value = Number(Number(reading.value).toPrecision(3));
    return numberIn(field.unit, Math.min(Math.max(value, field.min), field.max));
  };
  return Object.fromEntries(
    Object.entries(texts).map(([key, text]): [string, Text] => {
      const input = calculator.inputs[key];
      if (!input || input.kind === 'record' || input.kind === 'months') return [key, text];
      if (input.kind !== 'rows') return [key, cell(input, textIn(text))];
      return [
        key,
        rowsIn(text).map((row) => Object.fromEntries(Object.entries(input.columns).map(([name, column]) => [name, cell(column, row[name] ?? '')]))),
      ];
    }),
  );
}

/** The shortest query that opens with the state of a form. */
function shortest(calculator: Calculator, forms: readonly [Texts, Texts]): readonly [string, string] {
  const pairsOf = (texts: Texts): string[] => toLink(calculator, { this: texts, that: null }).split('&').slice(0, -1);
  const plain = pairsOf(startTexts(calculator.inputs));
  const [one, other] = forms.map((texts) =>
    pairsOf(texts)
      .filter((pair) => !plain.includes(pair))
      .map((pair) => decodeURIComponent(pair.replaceAll('+', ' '))),
  );
  return [(one ?? []).join('&'), (other ?? []).join('&')];
}
const joined = (...parts: readonly (string | readonly string[])[]): string =>
  parts
    .flat()
    .filter((part) => part !== '')
    .join('&');
/** What both sides share, once, and what each says of its own; nothing that makes no difference. */
function sharedOf(
  queries: readonly [string, string],
  holds: (one: string, other: string) => boolean,
): { readonly on: string; readonly sides: readonly [string, string] } {
  const split = (query: string): string[] => query.split('&').filter((pair) => pair !== '');
  let [mine, theirs] = [split(queries[0]), split(queries[1])];
  let shared = mine.filter((pair) => theirs.includes(pair));
  [mine, theirs] = [mine.filter((pair) => !shared.includes(pair)), theirs.filter((pair) => !shared.includes(pair))];
  const without = (pairs: readonly string[], pair: string): string[] => pairs.filter((each) => each !== pair);
  for (const pair of [...shared])
    if (holds(joined(without(shared, pair), mine), joined(without(shared, pair), theirs))) shared = without(shared, pair);
  for (const pair of [...mine]) if (holds(joined(shared, without(mine, pair)), joined(shared, theirs))) mine = without(mine, pair);
  for (const pair of [...theirs]) if (holds(joined(shared, mine), joined(shared, without(theirs, pair)))) theirs = without(theirs, pair);
  return { on: shared.join('&'), sides: [mine.join('&'), theirs.join('&')] };
}

/** As few words as tell this message from the others. */
function firstWords(say: string, messages: readonly string[]): string {
  const words = say.split(' ');
  for (let count = 5; count < words.length; count++) {
    const start = words.slice(0, count).join(' ');
    if (messages.filter((other) => other.startsWith(start)).length === 1) return start;
  }
  return say;
}

export interface Proposal {
  readonly limits: string;
  readonly lines: readonly string[];
  readonly missing: readonly string[];
}

/** Looks for the edges of one calculator from the default, its cases, kept links and random forms. */
export function proposeEdges(calculator: Calculator, cases: CaseList, kept: readonly string[], runs = 3000): Proposal {
  const { inputs } = calculator;
  const run = (texts: Texts) => {
    const { values, problems } = readForm(inputs, texts);
    return problems.length > 0 ? undefined : calculator.run(values);
  };
  const base = startTexts(inputs);
  const opened = (query: string): Texts => fromLink(calculator, query).form.this;
  const random = fc.sample(textsOf(inputs), { seed: 7, numRuns: runs }).map((texts) => tidied(calculator, texts));
  // Some limits are counts of rows that a random form never has.
  const long = random.slice(0, 200).map((texts) =>
    Object.fromEntries(
      Object.entries(texts).map(([key, text]): [string, Text] => {
        const input = inputs[key];
        if (input?.kind !== 'rows') return [key, text];
        const list = rowsIn(text);
        return [key, Array.from({ length: Math.min(input.maxRows, 14) }, (_, index) => list[index % list.length] ?? {})];
      }),
    ),
  );
  const forms = [base, ...[...cases.cases.map(({ query }) => query), ...kept].map(opened), ...random, ...long];
  const seen = forms.map((texts) => ({ texts, run: run(texts) }));

  const lines: string[] = [];
  const missing: string[] = [];
  const propose = (
    what: string,
    stateOf: (given: NonNullable<ReturnType<typeof run>>) => string | undefined,
    tell: (pair: Pair, on: string, sides: readonly [string, string]) => string,
    most: number,
  ): void => {
    const state: State = (texts) => {
      const given = run(texts);
      return given === undefined ? undefined : stateOf(given);
    };
    const states = seen.map(({ texts, run: given }) => ({ texts, state: given === undefined ? undefined : stateOf(given) }));
    const first = states.find((each) => each.state !== undefined);
    if (!first) {
      missing.push(`${what}: nothing computes`);
      return;
    }
    const starts = [
      first,
      ...[...new Set(states.map((each) => each.state))].flatMap(
        (word) => states.find((each) => each.state === word && word !== undefined && word !== first.state) ?? [],
      ),
    ];
    const pairs = new Map<string, Pair>();
    for (const start of starts.slice(0, 6)) {
      for (const word of new Set(states.map((each) => each.state))) {
        if (word === undefined || word === start.state) continue;
        for (const found of states.filter((each) => each.state === word).slice(0, 12))
          for (const pair of pairsFrom(calculator, state, start.texts, found.texts)) {
            const name = `${pair.at} ${[...pair.states].sort().join(' ')}`;
            const was = pairs.get(name);
            if (!was || (pair.isTight && !was.isTight)) pairs.set(name, pair);
          }
      }
      if (pairs.size > 0 && starts.length <= 2) break;
    }
    if (pairs.size === 0) missing.push(`${what}: not found`);
    const textsApart = (one: Texts, other: Texts): string => JSON.stringify(differencesOf(inputs, one, other).map(({ at, texts }) => [at, texts]));
    const told = [...pairs.values()].map((pair) => {
      const [first, second] = shortest(calculator, pair.forms).map(opened);
      const apart = textsApart(first ?? base, second ?? base);
      const holds = (one: string, other: string): boolean => {
        const texts = [opened(one), opened(other)] as const;
        return texts.every((each, at) => state(each) === pair.states[at]) && textsApart(...texts) === apart;
      };
      const { on, sides } = sharedOf(shortest(calculator, pair.forms), holds);
      const hasRecord = Object.entries(inputs).some(
        ([key, input]) => input.kind === 'record' && pair.forms.some((texts) => texts[key] !== base[key]),
      );
      const doubt = hasRecord ? '// write a record for it: ' : pair.isTight ? '' : '// too far apart: ';
      return { pair, line: `${doubt}${tell(pair, on, sides)}` };
    });
    const weight = ({ pair, line }: (typeof told)[number]): number => line.length + (pair.isTight ? 0 : 1000) + (pair.isSized ? 0 : 200);
    const groups = Map.groupBy(told, ({ pair }) => [...pair.states].sort().join(' '));
    const covered = new Set<string>();
    const isSized = (group: typeof told): boolean => group.some(({ pair }) => pair.isTight && pair.isSized);
    // Sizes first: a choice is told only where no size leads to the same.
    for (const group of [...groups.values()].sort((one, other) => Number(isSized(other)) - Number(isSized(one)))) {
      group.sort((one, other) => weight(one) - weight(other));
      const sized = group.filter(({ pair }) => pair.isTight && pair.isSized);
      const states = group[0]?.pair.states ?? [];
      if (sized.length === 0 && states.every((word) => covered.has(word))) continue;
      for (const word of states) covered.add(word);
      lines.push(...(sized.length > 0 ? sized.slice(0, most) : group.slice(0, 1)).map(({ line }) => line));
    }
  };

  const quote = (text: string): string => (text.includes("'") ? JSON.stringify(text) : `'${text}'`);
  const onto = (on: string): string => (on === '' ? '' : `on: ${quote(on)}, `);
  const messages = [...new Set(messagesOf(calculator).map(({ say }) => say))];
  for (const say of messages) {
    const words = firstWords(say, messages);
    const isCaution = calculator.cautions.some((caution) => caution.say === say);
    if (isCaution && seen.every(({ run: given }) => given === undefined || 'refusals' in given || saidIn(given).includes(say))) {
      lines.push(`always(${quote(words)}),`);
      continue;
    }
    propose(
      words,
      (given) => (saidIn(given).includes(say) ? 'raised' : 'outcome' in given || !isCaution ? 'silent' : undefined),
      ({ states }, on, sides) => {
        const [raised, silent] = states[0] === 'raised' ? sides : [sides[1], sides[0]];
        return `edge(${quote(words)}, { ${onto(on)}raised: ${quote(raised)}, silent: ${quote(silent)} }),`;
      },
      3,
    );
  }
  for (const [path, { words }] of judgingWords(calculator)) {
    propose(
      path,
      (given) => ('outcome' in given ? String(resultAt(given.outcome, path)) : undefined),
      ({ states }, on, sides) =>
        `turns(${quote(path)}, { ${states.map((word, at) => `${/^[a-z]\w*$/i.test(word) ? word : quote(word)}: ${quote(sides[at] ?? '')}`).join(', ')} }${on === '' ? '' : `, { on: ${quote(on)} }`}),`,
      1,
    );
    const reached = Object.keys(words).filter(
      (word) => !seen.some(({ run: given }) => given && 'outcome' in given && resultAt(given.outcome, path) === word),
    );
    if (reached.length > 0) missing.push(`${path}: no form gives ${reached.join(', ')}`);
  }
  for (const { of } of calculator.results) {
    const isShown = seen.flatMap(({ run: given }) => (given && 'outcome' in given ? [given.outcome.shown.includes(of)] : []));
    if (!isShown.includes(true) || !isShown.includes(false)) continue;
    propose(
      of,
      (given) => ('outcome' in given ? (given.outcome.shown.includes(of) ? 'shown' : 'hidden') : undefined),
      ({ states }, on, sides) => {
        const [shown, hidden] = states[0] === 'shown' ? sides : [sides[1], sides[0]];
        return `shows(${quote(of)}, { ${onto(on)}shown: ${quote(shown)}, hidden: ${quote(hidden)} }),`;
      },
      1,
    );
  }
  const limits = Object.entries(limitsOf(inputs)).map(([path, [min, max]]) => `${path.includes('.') ? quote(path) : path}: [${min}, ${max}]`);
  return { limits: `{ ${limits.join(', ')} }`, lines, missing };
}
