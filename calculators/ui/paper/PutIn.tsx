import type { Calculator } from '../../kit/define.ts';
import type { Cell } from '../../kit/inputs.ts';
import { isShown, rowsIn, type Texts, textIn } from '../../kit/state.ts';
import { tellInput } from '../../kit/summary.ts';
import { shortMonthName } from '../../units/months.ts';
import { isBare, type UnitSystem, unitIn, units } from '../../units/units.ts';
import { groupsShown, putInLines, tellWhole, unlikeIn } from './putIn.ts';

interface PutInProps {
  readonly calculator: Calculator;
  readonly mine: Texts;
  readonly theirs: Texts | null;
  readonly titles: readonly [string, string];
  readonly system: UnitSystem;
}

/** What differs as a table, the rest run in. */
export function PutIn({ calculator, mine, theirs, titles, system }: PutInProps) {
  const unlike = theirs ? unlikeIn(calculator.inputs, mine, theirs, system) : [];
  const same = putInLines(calculator, mine, new Set(unlike.map(({ key }) => key)), system);
  return (
    <section class="paper-put-in">
      <h2>What was put in</h2>
      <p class="run-in">
        {theirs && <b>The same for both. </b>}
        {same.map(({ title, text }) => (
          <span key={title}>
            {title !== '' && <b>{title}: </b>}
            {text}
            {/[.?!]$/.test(text) ? ' ' : '. '}
          </span>
        ))}
      </p>
      {unlike.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">What differs</th>
              <th scope="col" class="word-this">
                {titles[0]}
              </th>
              <th scope="col" class="word-that">
                {titles[1]}
              </th>
            </tr>
          </thead>
          <tbody>
            {unlike.map((each) => (
              <tr key={each.label}>
                <th scope="row">{each.label}</th>
                <td>{each.mine}</td>
                <td>{each.theirs}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** Rows to write on for a table that holds none. */
const emptyRows = 4;

/** A form that waits, on paper: each question with its answer, or a line to write it on. */
export function Lines({ calculator, texts, system }: { readonly calculator: Calculator; readonly texts: Texts; readonly system: UnitSystem }) {
  const line = (key: string, label: string, told: string, unit: string) => (
    <p class={told === '' ? 'blank' : 'blank is-told'} key={key}>
      <span>{label}</span> {told === '' ? <span class="write-on">{unit}</span> : <b>{told}</b>}
    </p>
  );
  const printed = (cell: Cell): string => {
    if (cell.kind !== 'number') return '';
    const unit = unitIn(system, cell.unit);
    return isBare(unit) ? '' : units[unit].print;
  };
  return (
    <div class="blanks">
      {groupsShown(calculator, texts).map(({ title, keys }) => (
        <section key={title}>
          {title !== '' && <h2>{title}</h2>}
          {keys.map((key) => {
            const input = calculator.inputs[key];
            if (!input) return null;
            if (input.kind === 'rows') {
              const [row = {}] = rowsIn(texts[key]);
              const cells = Object.entries(input.columns).filter(([, cell]) => isShown(cell, { ...texts, ...row }));
              return (
                <table class={cells.length > 4 ? 'blank-table is-wide' : 'blank-table'} key={key}>
                  <caption>{input.label}</caption>
                  <thead>
                    <tr>
                      {cells.map(([name, cell]) => (
                        <th scope="col" key={name}>
                          {cell.label}
                          {printed(cell) !== '' && `, ${printed(cell)}`}
                        </th>
                      ))}
                    </tr>
                  </thead>
                  <tbody>
                    {Array.from({ length: Math.max(emptyRows, rowsIn(texts[key]).length) }, (_, index) => (
                      <tr key={String(index)}>
                        {cells.map(([name, cell]) => {
                          const text = rowsIn(texts[key])[index]?.[name] ?? '';
                          return <td key={name}>{text.trim() === '' ? '' : tellInput(cell, text, texts, system)}</td>;
                        })}
                      </tr>
                    ))}
                  </tbody>
                </table>
              );
            }
            if (input.kind === 'months')
              return (
                <div class="blank-months" key={key}>
                  <p>{input.label}</p>
                  {input.default.map((_, index) => line(String(index), shortMonthName(index), '', ''))}
                </div>
              );
            const text = textIn(texts[key]);
            const told = text.trim() === '' ? '' : tellWhole(input, text, texts, system);
            return line(key, input.label, told, input.kind === 'record' ? '' : printed(input));
          })}
        </section>
      ))}
    </div>
  );
}
