import type { Calculator } from '../kit/define.ts';
import type { Input, Inputs } from '../kit/inputs.ts';
import { linkName } from '../kit/link.ts';
import type { Quantity } from '../kit/quantities.ts';
import { calculatorOf, slugs } from './catalog.ts';

/** One input as data: what it is called in a link, what it takes, what it holds when left out. */
function describeInput(key: string, input: Input, head = ''): object {
  const named = { name: `${head}${linkName(key, input)}`, label: input.label, kind: input.kind };
  const side = { ...('belongsTo' in input ? { belongsTo: input.belongsTo } : {}), ...(input.shownWhen ? { shownWhen: input.shownWhen } : {}) };
  switch (input.kind) {
    case 'number':
    case 'months':
      return { ...named, ...side, unit: input.unit, min: input.min, max: input.max, default: input.default };
    case 'record':
      return { ...named, ...side, unit: input.unit, min: input.min, max: input.max, maxRows: input.maxRows };
    case 'choice':
      return {
        ...named,
        ...side,
        default: input.default,
        options: Object.fromEntries(Object.entries(input.options).map(([option, { label }]) => [option, label])),
      };
    case 'rows':
      return {
        ...named,
        ...side,
        maxRows: input.maxRows,
        columns: Object.entries(input.columns).map(([name, cell]) => describeInput(name, cell, `${named.name}.`)),
        default: input.default,
      };
    default:
      return { ...named, ...side, default: input.default };
  }
}
const describeInputs = (inputs: Inputs): readonly object[] => Object.entries(inputs).map(([key, input]) => describeInput(key, input));

function describeResult(name: string, quantity: Quantity): object {
  const named = { name, label: quantity.label, kind: quantity.kind };
  if (quantity.kind === 'number') return { ...named, unit: quantity.unit };
  if (quantity.kind === 'word') return { ...named, words: quantity.words };
  if (quantity.kind === 'rows') return { ...named, columns: Object.entries(quantity.columns).map(([column, each]) => describeResult(column, each)) };
  return named;
}

const definitionAsData = ({ slug, title, question, version, inputs, quantities, results }: Calculator): object => ({
  slug,
  title,
  question,
  version,
  inputs: describeInputs(inputs),
  results: results.flatMap(({ of }) => (quantities[of] ? [describeResult(of, quantities[of])] : [])),
});

/** Every definition as data, for programs that want to know what can be asked. */
export async function describeAll(): Promise<readonly object[]> {
  const all = await Promise.all(slugs().map(calculatorOf));
  return all.flatMap((calculator) => (calculator ? [definitionAsData(calculator)] : []));
}
