import type { Outcome } from '../kit/define.ts';
import { printName } from '../kit/print.ts';
import type { Quantity, Scalar } from '../kit/quantities.ts';
import type { PlainShown } from '../kit/shown.ts';
import { printIn } from '../units/printQuantity.ts';
import type { UnitSystem } from '../units/units.ts';
import { scalarAt } from './Answer.tsx';
import { gapBetween } from './gap.ts';
import type { Sides } from './props.ts';

const isSaid = (outcome: Outcome | null, name: string): boolean => outcome?.shown.includes(name) === true;

/** What lies between two results, with its sign. */
export function difference(one: Scalar | undefined, two: Scalar | undefined, quantity: Quantity, system: UnitSystem): string {
  if (quantity.kind === 'rows' || quantity.kind === 'word' || typeof one !== 'number' || typeof two !== 'number') return '';
  if (quantity.kind === 'day') return one === two ? 'same' : `${Math.abs(two - one)} days ${two > one ? 'later' : 'earlier'}`;
  const { gap, unit, digits } = gapBetween(one, two, quantity, system);
  const printed = printIn(gap, unit, digits);
  return two > one && /[1-9]/.test(printed) ? `+${printed}` : printed;
}

/** Every result in order: its name left, its figure right; of two sides this, that and the gap under the name. */
export function ResultsList({ calculator, outcome, other, titles, system }: Sides) {
  const wanted = calculator.results.filter(({ of }) => calculator.quantities[of]?.kind !== 'rows' && (isSaid(outcome, of) || isSaid(other, of)));
  if (!other)
    return (
      <dl class="results-list">
        {wanted.map(({ of }) => (
          <div key={of}>
            <dt>{calculator.quantities[of]?.label}</dt>
            <dd>{printName(calculator, outcome.values, of, system)}</dd>
            {outcome.ranges[of] !== undefined && <dd class="results-range">{outcome.ranges[of]}</dd>}
          </div>
        ))}
      </dl>
    );
  const cell = (side: Outcome, { of }: PlainShown) => (isSaid(side, of) ? printName(calculator, side.values, of, system) : '–');
  return (
    <table class="pairs">
      <caption class="unseen">Results of both sides</caption>
      <thead>
        <tr>
          <td class="pairs-corner" />
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
        {wanted.map((shown) => {
          const quantity = calculator.quantities[shown.of];
          if (!quantity) return null;
          const isBoth = isSaid(outcome, shown.of) && isSaid(other, shown.of);
          return (
            <tr key={shown.of}>
              <th scope="row">{quantity.label}</th>
              {[
                cell(outcome, shown),
                cell(other, shown),
                isBoth ? difference(scalarAt(outcome, shown.of), scalarAt(other, shown.of), quantity, system) : '',
              ].map((text, place) => (
                <td key={place} class={text.length > 10 ? 'is-long' : undefined}>
                  {text}
                </td>
              ))}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
