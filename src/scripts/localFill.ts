// Offers to write a country's values into a form. Fetched only where somebody has picked a country, or an office gives values, and the calculator takes such values.
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Texts } from '../../calculators/kit/state.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import type { LocalFields } from '../local/fieldValues.ts';
import { type Fill, filledTexts, fillsOf, pathsOf } from '../local/fillsOf.ts';
import { officeSlug } from '../office/here.ts';

interface Offer {
  readonly box: HTMLElement;
  readonly calculator: Calculator;
  /** Slug of the country that was picked. */
  readonly country: string;
  /** What stands in the form now. */
  readonly texts: () => Texts | undefined;
  /** Puts texts into the form, whether their fields stand open or not. */
  readonly fill: (texts: Texts, from: ReadonlyMap<string, string>) => void;
  readonly system: () => UnitSystem;
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

async function countryFields(address: string, country: string): Promise<LocalFields | undefined> {
  const answer = await fetch(address);
  if (!answer.ok) return undefined;
  const all: Readonly<Record<string, LocalFields>> = await answer.json();
  return all[country];
}

/** Shows the offer above the form, if there is anything to fill in. Nothing is changed until somebody asks for it. */
export async function offerLocalFill(offer: Offer): Promise<void> {
  const line = offer.box.querySelector<HTMLElement>('[data-local-fill]');
  const address = line?.dataset['localFill'];
  if (!line || address === undefined) return;
  const local =
    offer.country === officeSlug ? (await import('../office/officeFields.ts')).officeFields() : await countryFields(address, offer.country);
  if (!local) return;
  const fillsNow = (now: Texts | undefined): readonly Fill[] => (now ? fillsOf(offer.calculator, now, offer.system(), local) : []);
  const count = fillsNow(offer.texts()).length;
  if (count === 0) return;
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = `Fill in local values, ${local.name} (${count} ${count === 1 ? 'field' : 'fields'})`;
  button.addEventListener('click', () => {
    const now = offer.texts();
    const fills = fillsNow(now);
    if (now) offer.fill(filledTexts(now, fills), new Map(fills.flatMap(pathsOf).map((path) => [path, local.name])));
    tell(line, local.name, fills);
  });
  line.replaceChildren(button);
  line.hidden = false;
}
