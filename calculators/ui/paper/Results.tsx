import type { Outcome } from '../../kit/define.ts';
import { printName } from '../../kit/print.ts';
import { scalarAt } from '../Answer.tsx';
import { difference } from '../ResultsList.tsx';
import type { Held } from './paperProps.ts';

/** Results by name: alone in two columns, of two sides with the gap. */
export function Results({ calculator, outcome, other, titles, system, names }: Held & { readonly names: readonly string[] }) {
  const tell = (side: Outcome, name: string): string => (side.shown.includes(name) ? printName(calculator, side.values, name, system) : '–');
  if (!other)
    return (
      <dl>
        {names.map((name) => (
          <div key={name}>
            <dt>{calculator.quantities[name]?.label}</dt>
            <dd>{tell(outcome, name)}</dd>
          </div>
        ))}
      </dl>
    );
  return (
    <table>
      <thead>
        <tr>
          <td />
          <th scope="col" class="word-this">
            {titles[0]}
          </th>
          <th scope="col" class="word-that">
            {titles[1]}
          </th>
          <th scope="col">The gap</th>
        </tr>
      </thead>
      <tbody>
        {names.map((name) => {
          const quantity = calculator.quantities[name];
          const isBoth = outcome.shown.includes(name) && other.shown.includes(name);
          return (
            quantity && (
              <tr key={name}>
                <th scope="row">{quantity.label}</th>
                <td>{tell(outcome, name)}</td>
                <td>{tell(other, name)}</td>
                <td>{isBoth ? difference(scalarAt(outcome, name), scalarAt(other, name), quantity, system) : ''}</td>
              </tr>
            )
          );
        })}
      </tbody>
    </table>
  );
}
/** Those that apply to either side, as `calculator.handout` has them first. */
export function resultNames({ calculator, outcome, other }: Pick<Held, 'calculator' | 'outcome' | 'other'>): readonly string[] {
  const applies = (name: string): boolean =>
    calculator.quantities[name]?.kind !== 'rows' && (outcome.shown.includes(name) || other?.shown.includes(name) === true);
  return [...new Set([...calculator.handout, ...calculator.results.map(({ of }) => of)])].filter(applies);
}
