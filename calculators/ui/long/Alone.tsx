import type { FunctionComponent } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Calculator, Run } from '../../kit/define.ts';
import { isShown, readForm, type Texts, type Values } from '../../kit/state.ts';
import { printIn } from '../../units/printQuantity.ts';
import { convert, type UnitSystem, unitIn } from '../../units/units.ts';
import { leadOf, scalarAt } from '../Answer.tsx';
import type { AloneProps } from '../props.ts';
import type { RunLong } from './useLong.tsx';

/** One thing changed and nothing else: the ends of it, one where there is a second side. */
interface Change {
  readonly label: string;
  readonly ends: readonly Values[];
}
interface Line {
  readonly label: string;
  /** Of the first result, against the form as it stands; nothing where it cannot be computed. */
  readonly moves: readonly (number | undefined)[];
}
const mostSwings = 5;

/** What differs between two sides, each alone. */
function differences({ inputs }: Calculator, mine: Texts, theirs: Texts, system: UnitSystem): readonly Change[] {
  return Object.entries(inputs).flatMap(([key, input]) => {
    // Nearly all are the same text, and each key asks.
    if (mine[key] === theirs[key] || JSON.stringify(mine[key]) === JSON.stringify(theirs[key]) || !isShown(input, mine)) return [];
    const read = readForm(inputs, { ...mine, [key]: theirs[key] ?? '' }, system);
    return read.problems.length > 0 ? [] : [{ label: input.label, ends: [read.values] }];
  });
}
/** What is asked and may be off, each at both its ends, inside its limits. */
function unsure({ inputs, swings = [] }: Calculator, values: Values): readonly Change[] {
  return swings.flatMap(({ of, low, high, isShare }) => {
    const [input, value] = [inputs[of], values[of]];
    if (input?.kind !== 'number' || typeof value !== 'number') return [];
    const at = (end: number): Values => ({ ...values, [of]: Math.min(input.max, Math.max(input.min, isShare ? end * value : end)) });
    return [{ label: input.label, ends: [at(low), at(high)] }];
  });
}

export function aloneBy(runLong: RunLong): FunctionComponent<AloneProps> {
  return ({ calculator, mine, theirs, system }) => {
    const [lines, setLines] = useState<readonly Line[] | undefined>(undefined);
    const [left, setLeft] = useState(0);
    const turn = useRef(0);
    const texts = useMemo(() => JSON.stringify([mine, theirs, system]), [mine, theirs, system]);
    const read = useMemo(() => readForm(calculator.inputs, mine, system), [mine, system]);
    const isPair = theirs !== null;
    const changes = useMemo(() => (theirs ? differences(calculator, mine, theirs, system) : unsure(calculator, read.values)), [read, theirs]);
    // What was run alone before holds for other numbers only.
    useEffect(() => {
      turn.current += 1;
      setLines(undefined);
      setLeft(0);
    }, [texts]);
    if (read.problems.length > 0 || changes.length === 0) return null;
    const run = async (): Promise<void> => {
      turn.current += 1;
      const mineTurn = turn.current;
      const leadWith = async (values: Values): Promise<number | undefined> => {
        const ran: Run = await runLong(values, system, () => undefined).done.catch((error: unknown) => {
          console.error(error);
          return { refusals: [] };
        });
        const lead = 'outcome' in ran ? leadOf(calculator, ran.outcome) : undefined;
        const value = 'outcome' in ran && lead ? scalarAt(ran.outcome, lead.of) : undefined;
        return typeof value === 'number' ? value : undefined;
      };
      setLeft(changes.length);
      const usual = await leadWith(read.values);
      const found: Line[] = [];
      for (const { label, ends } of changes) {
        const moves: (number | undefined)[] = [];
        for (const values of ends) {
          const value = await leadWith(values);
          if (turn.current !== mineTurn) return;
          moves.push(value === undefined || usual === undefined ? undefined : value - usual);
        }
        found.push({ label, moves });
        setLeft(changes.length - found.length);
      }
      const size = ({ moves }: Line): number => Math.max(...moves.map((move) => Math.abs(move ?? 0)));
      const sorted = found.toSorted((one, other) => size(other) - size(one));
      setLines(isPair ? sorted : sorted.slice(0, mostSwings));
    };
    const quantity = calculator.quantities[calculator.results[0]?.of ?? ''];
    const unit = quantity?.kind === 'number' ? quantity.unit : 'count';
    const digits = quantity?.kind === 'number' ? quantity.digits : 0;
    const told = (move: number | undefined): string => {
      if (move === undefined) return 'cannot be';
      const shown = unitIn(system, unit);
      const text = printIn(Math.abs(convert(move, unit, shown)), shown, digits);
      return /[1-9]/.test(text) ? `${text} ${move < 0 ? 'less' : 'more'}` : text;
    };
    const most = lines?.[0];
    return (
      <section class="results alone">
        <h2>{isPair ? 'Nothing but this changed' : 'What moves it most'}</h2>
        <p>
          {isPair
            ? 'The first side with one answer of the second, each alone. The lines need not add up to the whole.'
            : 'Each answer moved alone, as far as it may honestly be off. The five that move the first result most.'}
        </p>
        {lines === undefined ? (
          <button type="button" class="wide-button is-quiet" disabled={left > 0} onClick={() => void run()}>
            {left > 0 ? `Running, ${left} to go` : isPair ? 'Run each alone' : 'Run them'}
          </button>
        ) : (
          <>
            <table class="rows-table">
              <thead>
                <tr>
                  <th scope="col">Changed alone</th>
                  {isPair ? (
                    <th scope="col">{quantity?.label}</th>
                  ) : (
                    [
                      <th key="low" scope="col">
                        Low
                      </th>,
                      <th key="high" scope="col">
                        High
                      </th>,
                    ]
                  )}
                </tr>
              </thead>
              <tbody>
                {lines.map(({ label, moves }) => (
                  <tr key={label}>
                    <th scope="row">{label}</th>
                    {moves.map((move, index) => (
                      <td key={index} class="is-number">
                        {told(move)}
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
            {most && <p role="status">Largest: {most.label.toLowerCase()}.</p>}
          </>
        )}
      </section>
    );
  };
}
