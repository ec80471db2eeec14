import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { Calculator } from '../../calculators/kit/define.ts';
import { namesIn, readFormula } from '../../calculators/kit/formula.ts';
import type { Cell, Columns, Input, Inputs, MonthsInput, RecordInput, RowsInput, ShownWhen } from '../../calculators/kit/inputs.ts';
import { linkName } from '../../calculators/kit/link.ts';
import type { Face, PlainPicture, SpanMark } from '../../calculators/kit/pictures.ts';
import { defaultText, quantityText, readCell, readMonth } from '../../calculators/kit/read.ts';
import { root } from './files.ts';
import { faultsOfTool } from './toolFaults.ts';
import { faultOfWeighing } from './weighing.ts';

const kebab = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const spoken = new Set(['common practice', 'from memory', 'our own']);
/** `tr55-1986, eq. 2-3` names the file of that key. */
const isSource = (source: string): boolean => {
  const key = source.split(',')[0]?.trim() ?? '';
  return spoken.has(key) || existsSync(join(root, `content/sources/${key}.json`));
};
const isCell = (input: Input): input is Cell => input.kind !== 'rows' && input.kind !== 'months' && input.kind !== 'record';

/** Link names of one table or of the top, former names included. */
function namesOf(inputs: Inputs): readonly string[] {
  return Object.entries(inputs).flatMap(([key, input]) => [linkName(key, input), ...('aliases' in input ? (input.aliases ?? []) : [])]);
}

/** What is wrong with one field, in words. `beside` holds every field that it may speak of: those of its row and the top. */
function faultsOfCell(at: string, cell: Cell, beside: Inputs, neighbours: Inputs | Columns, version: number): readonly string[] {
  const faults: string[] = [];
  const say = (isWrong: boolean, what: string): void => {
    if (isWrong) faults.push(`${at}: ${what}`);
  };
  const start = readCell(cell, defaultText(cell));
  if ('problem' in start) say(true, `the default is refused: ${start.problem}`);
  if (cell.kind === 'number') {
    say(!(cell.min < cell.max), 'min is not under max');
    say(cell.default < cell.min || cell.default > cell.max, 'the default is outside its limits');
    say(cell.symbol.trim() === '', 'has no symbol');
  }
  if (cell.kind === 'choice') {
    const keys = Object.keys(cell.options);
    const all = [...keys, ...Object.values(cell.options).flatMap(({ aliases = [] }) => aliases)];
    say(new Set(all).size !== all.length, 'two options go by one name');
    for (const [option, { label, fills = {} }] of Object.entries(cell.options)) {
      say(!kebab.test(option), `option ${option} is not kebab-case`);
      say(label.trim() === '' || label.endsWith(':'), `option ${option} needs a label without a colon`);
      for (const [name, value] of Object.entries(fills)) {
        const target = Object.hasOwn(neighbours, name) ? neighbours[name] : undefined;
        if (!target || !isCell(target)) say(true, `option ${option} fills ${name}, which does not stand beside it`);
        else say('problem' in readCell(target, defaultText(target, value)), `option ${option} fills ${name} with ${value}, which is refused`);
      }
    }
  }
  faults.push(...faultsOfCommon(at, cell, beside, version));
  if (cell.since) say('problem' in readCell(cell, cell.since.before), `its value from before, ${cell.since.before}, is refused`);
  return faults;
}
function faultsOfCommon(at: string, input: Input, beside: Inputs, version: number): readonly string[] {
  const faults: string[] = [];
  if (input.label.trim() === '' || input.label.trim().endsWith(':')) faults.push(`${at}: needs a label without a colon`);
  if ('since' in input && input.since && input.since.version > version) faults.push(`${at}: was added after this version`);
  for (const [name, is] of Object.entries(input.shownWhen ?? {})) {
    const other = Object.hasOwn(beside, name) ? beside[name] : undefined;
    const possible = other?.kind === 'choice' ? Object.keys(other.options) : other?.kind === 'yesNo' ? ['yes', 'no'] : [];
    for (const text of typeof is === 'string' ? [is] : is)
      if (!possible.includes(text)) faults.push(`${at}: is shown when ${name} is ${text}, which it never is`);
  }
  return faults;
}
function faultsOfList(at: string, input: RowsInput | MonthsInput | RecordInput, inputs: Inputs, version: number): readonly string[] {
  if (input.kind === 'record') return input.read(input.default).problem !== undefined ? [`${at}: the default is refused`] : [];
  if (input.kind === 'months') {
    const faults = input.default.length === 12 ? [] : [`${at}: ${input.default.length} months`];
    const refused = input.default.filter((value, month) => 'problem' in readMonth(input, month, quantityText(value, input.unit), 'us'));
    return [...faults, ...refused.map((value) => `${at}: the default ${value} is refused`)];
  }
  const names = namesOf(input.columns);
  return [
    ...(new Set(names).size === names.length ? [] : [`${at}: two columns go by one name`]),
    ...(input.default.length >= 1 && input.default.length <= input.maxRows ? [] : [`${at}: ${input.default.length} rows to begin with`]),
    ...input.default.flatMap((row, index) =>
      Object.entries(input.columns)
        .filter(([name, cell]) => 'problem' in readCell(cell, defaultText(cell, row[name])))
        .map(([name]) => `${at}.${index}.${name}: the default is refused`),
    ),
    ...Object.entries(input.columns).flatMap(([name, cell]) =>
      faultsOfCell(`${at}.${name}`, cell, { ...inputs, ...input.columns }, input.columns, version),
    ),
  ];
}

/** Everything that a formula or a sentence may name. */
function known({ inputs, quantities }: Calculator): { readonly numbers: ReadonlySet<string>; readonly scalars: ReadonlySet<string> } {
  const cells = Object.entries(inputs).filter(([, input]) => isCell(input));
  const results = Object.entries(quantities).filter(([, quantity]) => quantity.kind !== 'rows');
  return {
    numbers: new Set([...cells, ...results].filter(([, each]) => each.kind === 'number').map(([name]) => name)),
    scalars: new Set([...cells, ...results].map(([name]) => name)),
  };
}
const columnsOf = ({ quantities }: Calculator, rows: string) => {
  const quantity = Object.hasOwn(quantities, rows) ? quantities[rows] : undefined;
  return quantity?.kind === 'rows' ? quantity.columns : undefined;
};
const numbersAmong = (columns: Readonly<Record<string, { readonly kind: string }>>): readonly string[] =>
  Object.entries(columns)
    .filter(([, { kind }]) => kind === 'number')
    .map(([name]) => name);

function unknownInSteps(calculator: Calculator): readonly string[] {
  const { numbers, scalars } = known(calculator);
  const inFormula = (at: string, template: string, names: ReadonlySet<string>): readonly string[] =>
    namesIn(readFormula(template))
      .filter((name) => !names.has(name))
      .map((name) => `${at}: ${name} in ${template} is no number with a symbol`);
  return calculator.steps.flatMap((step, index) => {
    const at = `step ${index + 1}`;
    const words = [...step.says.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
    const faults = words.filter((name) => !scalars.has(name)).map((name) => `${at}: {${name}} in its words is unknown`);
    if (step.kind === 'check') return [...faults, ...inFormula(at, step.left, numbers), ...inFormula(at, step.right, numbers)];
    if (step.kind === 'lookup') return Object.hasOwn(calculator.quantities, step.shows) ? faults : [...faults, `${at}: ${step.shows} is unknown`];
    if (step.kind === 'formula') {
      const shows = calculator.quantities[step.shows]?.kind === 'number' ? [] : [`${at}: ${step.shows} is no number`];
      return [...faults, ...shows, ...step.ways.flatMap((way) => inFormula(at, way.formula, numbers))];
    }
    const columns = columnsOf(calculator, step.of);
    if (!columns) return [...faults, `${at}: ${step.of} is no table`];
    const own = numbersAmong(columns);
    // A column hides a result of the same name, so it must be a number itself.
    const others = [...numbers].filter((name) => !Object.hasOwn(columns, name));
    return [
      ...faults,
      ...Object.entries(step.formulas).flatMap(([column, ways]) => [
        ...(own.includes(column) ? [] : [`${at}: column ${column} is no number`]),
        ...ways.flatMap((way) => inFormula(`${at}, ${column}`, way.formula, new Set([...own, ...others]))),
      ]),
      ...Object.entries(step.sums).flatMap(([name, column]) =>
        own.includes(column) && numbers.has(name) ? [] : [`${at}: ${name} as the sum of ${column}`],
      ),
    ];
  });
}
/** Every name in a part of the data, however deep; `layers` names columns besides. */
const namesOfPart = (part: unknown): readonly string[] =>
  typeof part === 'string' ? [part] : typeof part === 'object' && part !== null ? Object.values(part).flatMap(namesOfPart) : [];
/** Options and words that a picture waits for and that there are not. */
const unknownWhen = ({ inputs, quantities }: Calculator, shownWhen: ShownWhen = {}): readonly string[] =>
  Object.entries(shownWhen).flatMap(([name, is]) => {
    const [input, quantity] = [inputs[name], quantities[name]];
    const words = input?.kind === 'choice' ? input.options : quantity?.kind === 'word' ? quantity.words : undefined;
    return words === undefined ? [name] : [is].flat().filter((word) => !Object.hasOwn(words, word));
  });
function unknownInFace(calculator: Calculator, { kind: _, shownWhen = {}, layers, ...parts }: Face): readonly string[] {
  const { numbers } = known(calculator);
  const { rows = '', top = '', thickness = '', filledPercent = '', ...more } = layers ?? {};
  const columns = layers ? columnsOf(calculator, rows) : {};
  const inRows = layers ? [top, thickness, filledPercent].filter((name) => !columns || !Object.hasOwn(columns, name)) : [];
  return [...unknownWhen(calculator, shownWhen), ...inRows, ...namesOfPart([parts, more]).filter((name) => !numbers.has(name))];
}
function unknownInPicture(calculator: Calculator, picture: PlainPicture): readonly string[] {
  const { numbers } = known(calculator);
  const inWords = (words: string | undefined): readonly string[] => [...(words ?? '').matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
  if (picture.kind === 'face') return unknownInFace(calculator, picture);
  if (picture.kind === 'shares') {
    const bars = [picture, ...(picture.beside ?? [])];
    const names = bars.flatMap(({ title, whole, parts }) => [
      ...(whole === undefined ? [] : [whole]),
      ...inWords(title),
      ...parts.flatMap(({ of, says }) => [of, ...inWords(says)]),
    ]);
    return [...names.filter((name) => !numbers.has(name)), ...unknownWhen(calculator, picture.shownWhen)];
  }
  const dates = new Set(
    Object.entries({ ...calculator.inputs, ...calculator.quantities })
      .filter(([, { kind }]) => kind === 'date' || kind === 'day')
      .map(([name]) => name),
  );
  const isAt = (name: string): boolean => numbers.has(name) || dates.has(name);
  const marked = (mark: SpanMark | undefined): readonly string[] =>
    mark === undefined ? [] : [...[mark.at, ...inWords(mark.says)].filter((name) => !isAt(name)), ...unknownWhen(calculator, mark.shownWhen)];
  if (picture.kind === 'spans' && 'lanes' in picture)
    return [...picture.lanes.map(({ of }) => of).filter((name) => !numbers.has(name)), ...marked(picture.mark)];
  const columns = columnsOf(calculator, picture.rows);
  if (!columns) return [picture.rows];
  const beyond = (names: readonly (string | undefined)[]): readonly string[] =>
    names.filter((name) => name !== undefined).filter((name) => !Object.hasOwn(columns, name));
  switch (picture.kind) {
    case 'spans': {
      const { from } = picture;
      const start = typeof from === 'string' ? beyond([from]) : [from.of].filter((name) => !isAt(name));
      return [...start, ...beyond([picture.lane, picture.to, picture.told, picture.hollow?.of]), ...marked(picture.mark)];
    }
    case 'strip': {
      const { shownWhen: _, layers, ...parts } = picture.face;
      const named = namesOfPart([parts, layers]).filter((name) => name !== 'face' && name !== picture.rows);
      return [
        ...beyond([picture.x, picture.gaps?.of, ...picture.lanes.map(({ of }) => of)]),
        ...named.filter((name) => !numbers.has(name) && !Object.hasOwn(columns, name)),
      ];
    }
    case 'bars':
      return beyond([picture.x, picture.y, picture.usual]);
    case 'lines': {
      const yours = picture.you ? [picture.you.at, picture.you.value].filter((name) => !isAt(name)) : [];
      const marks = (picture.rowMarks ?? []).flatMap(({ of, is }) => {
        const column = columns[of];
        return column?.kind === 'word' && Object.hasOwn(column.words, is) ? [] : [`${of} is ${is}`];
      });
      return [...yours, ...marks, ...marked(picture.mark), ...beyond([picture.x, ...picture.ys])];
    }
  }
}

/** What every definition declares, and declares soundly. */
export function itIsWellDeclared(calculator: Calculator): void {
  const { inputs, quantities, version } = calculator;

  it('has a slug and link names that can stand for ever', () => {
    expect(calculator.slug).toMatch(kebab);
    const names = namesOf(inputs);
    expect(names.filter((name, index) => names.indexOf(name) !== index || !kebab.test(name) || name === 'v' || name === 'that')).toEqual([]);
    const cells = Object.values(inputs).flatMap((input) => (input.kind === 'rows' ? namesOf(input.columns) : []));
    expect(cells.filter((name) => !kebab.test(name))).toEqual([]);
  });

  it('shows whom to call where it tells somebody to give up stock', () => {
    expect(faultOfWeighing(calculator)).toBeUndefined();
  });

  it('asks for what can be answered', () => {
    const faults = Object.entries(inputs).flatMap(([key, input]) =>
      isCell(input)
        ? faultsOfCell(key, input, inputs, inputs, version)
        : [...faultsOfCommon(key, input, inputs, version), ...faultsOfList(key, input, inputs, version)],
    );
    expect(faults).toEqual([]);
  });

  it('hands out tools only where they can be used', () => {
    const faults = Object.entries(inputs).flatMap(([key, input]) => [
      ...faultsOfTool(input, inputs).map((fault) => `${key}: ${fault}`),
      ...(input.kind === 'rows'
        ? Object.entries(input.columns).flatMap(([name, cell]) => faultsOfTool(cell, {}).map((fault) => `${key}.${name}: ${fault}`))
        : []),
    ]);
    expect(faults).toEqual([]);
  });

  it('names its results, and only what it has', () => {
    const { numbers } = known(calculator);
    const all = Object.entries(quantities).flatMap(([key, quantity]) => [
      [key, quantity] as const,
      ...(quantity.kind === 'rows' ? Object.entries(quantity.columns).map(([name, column]) => [`${key}.${name}`, column] as const) : []),
    ]);
    expect(all.filter(([, { label }]) => label.trim() === '' || label.trim().endsWith(':')).map(([name]) => name)).toEqual([]);
    expect(all.filter(([, quantity]) => quantity.kind === 'number' && quantity.symbol.trim() === '').map(([name]) => name)).toEqual([]);
    for (const { of, range } of calculator.results) {
      expect(Object.keys(quantities)).toContain(of);
      if (!range) continue;
      expect(numbers, range.low).toContain(range.low);
      expect(numbers, range.high).toContain(range.high);
    }
    for (const quantity of Object.values(quantities))
      if (quantity.kind === 'rows') expect((quantity.shown ?? []).filter((name) => !Object.hasOwn(quantity.columns, name))).toEqual([]);
    expect(
      [...(calculator.picture ? [calculator.picture] : []), ...calculator.morePictures].flatMap((each) => unknownInPicture(calculator, each)),
    ).toEqual([]);
  });

  it('draws formulas that can be read, of numbers that have symbols', () => {
    expect(unknownInSteps(calculator)).toEqual([]);
  });

  it('rests on sources that are there, and serves a guide', () => {
    const cited = [
      ...calculator.sources,
      ...calculator.cautions.map(({ source }) => source),
      ...calculator.steps.flatMap(({ source }) => (source === undefined ? [] : [source])),
    ];
    const unknown = cited.filter((source) => !isSource(source)).map((source) => `add content/sources/${source.split(',')[0]?.trim()}.json`);
    expect(unknown).toEqual([]);
    expect(calculator.sources, 'name in `sources` what the definition rests on').not.toEqual([]);
    expect(
      calculator.guides.filter((guide) => kebab.test(guide)),
      'name in `guides` the guide that it belongs to',
    ).not.toEqual([]);
    expect(
      calculator.changes.filter((change) => change.version > version),
      '`changes` speaks of a version that is not there yet',
    ).toEqual([]);
  });
}
