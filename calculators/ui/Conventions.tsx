import type { Calculator, Outcome } from '../kit/define.ts';
import type { ChoiceInput } from '../kit/inputs.ts';
import { printName } from '../kit/print.ts';
import { isShown, type Texts, textIn } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';
import { leadOf } from './Results.tsx';
import { runSide } from './sides.ts';

interface ConventionsProps {
  readonly calculator: Calculator;
  readonly texts: Texts;
  readonly outcome: Outcome;
  readonly system: UnitSystem;
}

/** The first result, as they stand on the page, that another way of counting changes to the eye. */
function firstChanged({ calculator, system }: ConventionsProps, mine: Outcome, other: Outcome): string | undefined {
  const lead = leadOf(calculator, other)?.of;
  if (lead === undefined) return undefined;
  // A large answer of another kind is a change by itself.
  if (lead !== leadOf(calculator, mine)?.of) return lead;
  return other.shown.find(
    (name) =>
      mine.shown.includes(name) &&
      calculator.quantities[name]?.kind !== 'rows' &&
      printName(calculator, mine.values, name, system) !== printName(calculator, other.values, name, system),
  );
}

/** What the result would be under the other ways of counting; those that change nothing here are passed over. */
export function Conventions(props: ConventionsProps) {
  const { calculator, texts, outcome, system } = props;
  const choices = Object.entries(calculator.inputs).filter(
    (entry): entry is [string, ChoiceInput] => entry[1].kind === 'choice' && entry[1].convention === true && isShown(entry[1], texts),
  );
  const lead = leadOf(calculator, outcome)?.of;
  const lines = choices.flatMap(([key, input]) =>
    Object.keys(input.options)
      .filter((option) => option !== textIn(texts[key]))
      .flatMap((option) => {
        const { outcome: other } = runSide(calculator, { ...texts, [key]: option }, system);
        const changed = other ? firstChanged(props, outcome, other) : undefined;
        if (!other || changed === undefined) return [];
        const value = printName(calculator, other.values, changed, system);
        const what = changed === lead ? value : `${value} for “${calculator.quantities[changed]?.label ?? changed}”`;
        return [{ key: `${key}-${option}`, text: `${input.label}: “${input.options[option]?.label}” would give ${what}.` }];
      }),
  );
  if (choices.length === 0) return null;
  if (lines.length === 0) return <p class="conventions">The other ways of counting give the same here.</p>;
  return (
    <ul class="conventions">
      {lines.map(({ key, text }) => (
        <li key={key}>{text}</li>
      ))}
    </ul>
  );
}
