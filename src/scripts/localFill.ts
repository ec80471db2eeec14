// Offers to write a country's values into a form. Fetched only where somebody has picked a country and the calculator takes such values.
import type { Calculator } from '../../calculators/kit/define.ts';
import { isShown, startTexts, type Texts, textIn } from '../../calculators/kit/state.ts';
import { keptText } from '../../calculators/ui/fieldText.ts';
import { printIn } from '../../calculators/units/printQuantity.ts';
import { convert, type UnitSystem, unitIn } from '../../calculators/units/units.ts';
import type { LocalField, LocalFields } from '../local/localFields.ts';

interface Offer {
  readonly box: HTMLElement;
  readonly calculator: Calculator;
  /** Slug of the country that was picked. */
  readonly country: string;
  /** What stands in the form now. */
  readonly texts: () => Texts | undefined;
  /** Puts texts into the form, whether their fields stand open or not. */
  readonly fill: (texts: Texts) => void;
  readonly system: () => UnitSystem;
}
interface Fill {
  readonly key: string;
  readonly label: string;
  readonly text: string;
  /** The same with its unit, to be read. */
  readonly shown: string;
  readonly source: string;
}

/**
 * Fields that apply, still hold what they were built with, and would get another value. Of one row all or none: a height to stop at
 * beside a height to start at that somebody typed is no pair.
 */
function fillsOf({ calculator, texts, system }: Offer, local: LocalFields): readonly Fill[] {
  const now = texts();
  if (!now) return [];
  const starts = [startTexts(calculator.inputs, 'us'), startTexts(calculator.inputs, 'si')];
  const offered = local.calculators[calculator.slug] ?? [];
  const isUntouched = (key: string): boolean => starts.some((start) => textIn(start[key]) === textIn(now[key]));
  const canTake = ({ key, value }: LocalField): boolean => {
    const input = calculator.inputs[key];
    return input?.kind === 'number' && isShown(input, now) && value >= input.min && value <= input.max && isUntouched(key);
  };
  const torn = new Set(offered.flatMap((each) => (each.row === undefined || canTake(each) ? [] : [each.row])));
  return offered.flatMap((each) => {
    const { key, value, source, row } = each;
    const input = calculator.inputs[key];
    if (!canTake(each) || (row !== undefined && torn.has(row))) return [];
    if (input?.kind !== 'number' || value === input.default) return [];
    const unit = unitIn(system(), input.unit);
    const typed = unit === input.unit ? String(value) : String(Number(convert(value, input.unit, unit).toPrecision(4)));
    const digits = /\.(\d+)$/.exec(typed)?.[1]?.length ?? 0;
    return [{ key, label: input.label, text: keptText(typed, input.unit, system()), shown: printIn(Number(typed), unit, digits), source }];
  });
}

function tell(line: HTMLElement, name: string, fills: readonly Fill[]): void {
  const list = document.createElement('ul');
  for (const { label, shown, source } of fills) {
    const item = document.createElement('li');
    item.textContent = `${label}: ${shown} (from local values: ${source})`;
    list.append(item);
  }
  const head = document.createElement('p');
  head.textContent = `Filled in from local values, ${name}. A start: put your own over them.`;
  line.replaceChildren(head, list);
}

/** Shows the offer above the form, if there is anything to fill in. Nothing is changed until somebody asks for it. */
export async function offerLocalFill(offer: Offer): Promise<void> {
  const line = offer.box.querySelector<HTMLElement>('[data-local-fill]');
  const address = line?.dataset['localFill'];
  if (!line || address === undefined) return;
  const answer = await fetch(address);
  if (!answer.ok) return;
  const all: Readonly<Record<string, LocalFields>> = await answer.json();
  const local = all[offer.country];
  if (!local) return;
  const count = fillsOf(offer, local).length;
  if (count === 0) return;
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = `Fill in local values, ${local.name} (${count} ${count === 1 ? 'field' : 'fields'})`;
  button.addEventListener('click', () => {
    const fills = fillsOf(offer, local);
    offer.fill(Object.fromEntries(fills.map(({ key, text }) => [key, text])));
    tell(line, local.name, fills);
  });
  line.replaceChildren(button);
  line.hidden = false;
}
