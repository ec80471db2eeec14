// Offers to write a country's values into a form. Fetched only where somebody has picked a country, or an office gives values, and the calculator takes such values.
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Texts } from '../../calculators/kit/state.ts';
import type { Reach } from '../../calculators/ui/formProps.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import type { LocalFields } from '../local/fieldValues.ts';
import { type Fill, filledTexts, fillsOf, pathsOf } from '../local/fillsOf.ts';
import { officeSlug } from '../office/here.ts';
import { kept, pickedCountry, unitsKey } from './kept.ts';
import { readData } from './readData.ts';

interface Offer {
  readonly box: HTMLElement;
  readonly calculator: Calculator;
  readonly reach: () => Reach | undefined;
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

async function countryFields(country: string): Promise<LocalFields | undefined> {
  const all = await readData<Readonly<Record<string, LocalFields>>>('/local/fields.json');
  return all[country];
}

const systemNow = (): UnitSystem => (kept('localStorage', unitsKey) === 'si' ? 'si' : 'us');

/** Shows the offer above the form, if there is anything to fill in. Nothing is changed until somebody asks for it. */
export async function offerLocalFill({ box, calculator, reach }: Offer): Promise<void> {
  const line = box.querySelector<HTMLElement>('[data-local-fill]');
  const country = pickedCountry();
  if (!line || country === null) return;
  const local = country === officeSlug ? (await import('../office/officeFields.ts')).officeFields() : await countryFields(country);
  if (!local) return;
  // As the form stands, not as it was last told: a key may have come since.
  const now = (): Texts | undefined => reach()?.now().form.this;
  const fillsNow = (texts: Texts | undefined): readonly Fill[] => (texts ? fillsOf(calculator, texts, systemNow(), local) : []);
  const count = fillsNow(now()).length;
  if (count === 0) return;
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = `Fill in local values, ${local.name} (${count} ${count === 1 ? 'field' : 'fields'})`;
  button.addEventListener('click', () => {
    const texts = now();
    const fills = fillsNow(texts);
    if (texts) reach()?.fill(filledTexts(texts, fills), fills.flatMap(pathsOf), local.name);
    tell(line, local.name, fills);
  });
  line.replaceChildren(button);
  line.hidden = false;
}
