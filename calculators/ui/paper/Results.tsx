import type { Calculator, Outcome } from '../../kit/define.ts';
import { printName } from '../../kit/print.ts';
import type { UnitSystem } from '../../units/units.ts';
import { scalarAt } from '../Answer.tsx';
import { difference } from '../ResultsList.tsx';
import type { Held } from './paperProps.ts';

const tell = (calculator: Calculator, side: Outcome, name: string, system: UnitSystem): string =>
  side.shown.includes(name) ? printName(calculator, side.values, name, system) : '–';

/** Results by name: alone in two columns, of two sides with the gap. */
export function Results({ calculator, outcome, other, titles, system, names }: Held & { readonly names: readonly string[] }) {
  if (!other)
    return (
      <dl>
        {names.map((name) => (
          <div key={name}>
            <dt>{calculator.quantities[name]?.label}</dt>
            <dd>{tell(calculator, outcome, name, system)}</dd>
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
                <td>{tell(calculator, outcome, name, system)}</td>
                <td>{tell(calculator, other, name, system)}</td>
                <td>{isBoth ? difference(scalarAt(outcome, name), scalarAt(other, name), quantity, system) : ''}</td>
              </tr>
            )
          );
        })}
      </tbody>
    </table>
  );
}
/** Those that apply to either side, as `calculator.handout` has them first; of two sides those before that differ. */
export function resultNames({ calculator, outcome, other, system }: Held): readonly string[] {
  const applies = (name: string): boolean =>
    calculator.quantities[name]?.kind !== 'rows' && (outcome.shown.includes(name) || other?.shown.includes(name) === true);
  const names = [...new Set([...calculator.handout, ...calculator.results.map(({ of }) => of)])].filter(applies);
  const isSame = (name: string): boolean => other === null || tell(calculator, outcome, name, system) === tell(calculator, other, name, system);
  return names.toSorted((one, two) => Number(isSame(one)) - Number(isSame(two)));
}
