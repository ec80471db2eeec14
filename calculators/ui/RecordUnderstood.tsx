import type { RecordInput } from '../kit/inputs.ts';
import { countings } from '../kit/record/amounts.ts';
import { counted } from '../kit/record/linesSaid.ts';
import type { Question } from '../kit/record/said.ts';
import type { Understood } from '../kit/record/understandRecord.ts';
import { printDay, printNumber, printQuantity } from '../units/printQuantity.ts';
import type { UnitSystem } from '../units/units.ts';

interface Props {
  readonly id: string;
  readonly input: RecordInput;
  readonly understood: Understood;
  readonly system: UnitSystem;
  readonly onAnswer: (name: string, value: string) => void;
}

function Asked({ id, question, onAnswer }: { readonly id: string; readonly question: Question } & Pick<Props, 'onAnswer'>) {
  const { name, ask, options, answer } = question;
  const [only] = options;
  if (options.length === 1 && only) {
    return (
      <p class="record-question">
        {ask}{' '}
        <button type="button" aria-pressed={answer !== ''} onClick={() => onAnswer(name, answer === '' ? only.value : '')}>
          {only.label}
        </button>
      </p>
    );
  }
  if (options.length > 3) {
    return (
      <div class="record-question">
        <label for={`${id}-${name}`}>{ask}</label>
        <div class="control">
          <select id={`${id}-${name}`} autocomplete="off" value={answer} onChange={(event) => onAnswer(name, event.currentTarget.value)}>
            {answer === '' && <option value="">Choose</option>}
            {options.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </div>
      </div>
    );
  }
  return (
    <fieldset class="record-question">
      <legend>{ask}</legend>
      <div class="answers-to-tap">
        {options.map(({ value, label }) => (
          <label key={value}>
            <input
              type="radio"
              name={`${id}-${name}`}
              id={`${id}-${name}-${value}`}
              value={value}
              autocomplete="off"
              checked={value === answer}
              onChange={() => onAnswer(name, value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

const mostYears = 12;
/** `2024: 31 days, 2025: 3 days`. */
export function missingSaid(missing: Understood['missing']): string {
  const more = missing.length - mostYears;
  const years = missing.slice(0, mostYears).map(({ year, days }) => `${year}: ${days}`);
  return missing.length === 0 ? 'none' : `${years.join(', ')}${more > 0 ? `, and ${counted(more, 'more year')}` : ''}`;
}

/** What was made of a record, for somebody to look over, to settle and to confirm. */
export function RecordUnderstood({ id, input, understood, system, onAnswer }: Props) {
  const { lines, problem, questions, told, largest, missing, isMonthly, isConfirmed } = understood;
  const [first, last] = [lines[0], lines.at(-1)];
  const facts: readonly (readonly [string, string])[] = [
    [isMonthly ? 'Months read' : 'Days read', printNumber(lines.length, 0)],
    ['From', first ? printDay(first.day - (first.days ?? 1) + 1) : ''],
    ['To', last ? printDay(last.day) : ''],
    ['Day taken from', understood.dateColumn],
    ['Rain taken from', `${understood.rainColumn}, in ${countings[understood.counting]}`],
    [
      isMonthly ? 'Most in a month' : 'Most in a day',
      largest ? `${printQuantity(largest.amount, input.unit, 2, system)}, ${printDay(largest.day)}` : '',
    ],
    ['Days not read, by year', missingSaid(missing)],
  ];
  return (
    <section class="record-understood" aria-label={`${input.label}: what was understood`}>
      {questions.map((question) => (
        <Asked key={question.name} id={id} question={question} onAnswer={onAnswer} />
      ))}
      {problem === undefined && (
        <>
          <p class="record-title">What was understood</p>
          <dl>
            {facts
              .filter(([, fact]) => fact !== '')
              .map(([name, fact]) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{fact}</dd>
                </div>
              ))}
          </dl>
        </>
      )}
      {told.length > 0 && (
        <ul>
          {told.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      )}
      {problem === undefined && (
        <label class="record-confirm">
          <input type="checkbox" id={`${id}-confirmed`} checked={isConfirmed} onChange={() => onAnswer('confirmed', isConfirmed ? '' : 'yes')} />
          <span>This is how the record is meant</span>
        </label>
      )}
    </section>
  );
}
