// What the open place does to a form that a link opened: nothing unasked, unless the figures are the reader's own. Fetched only with a link.
import { useState } from 'preact/hooks';
import { holding } from '../../../calculators/kit/holding.ts';
import { refusalsIn } from '../../../calculators/kit/runTexts.ts';
import { isShown, type Text, type Texts } from '../../../calculators/kit/state.ts';
import { tellInput } from '../../../calculators/kit/summary.ts';
import { textAt } from '../../../calculators/kit/textAt.ts';
import type { Change } from '../../../calculators/ui/formProps.ts';
import { blankIn } from '../../../calculators/ui/touched.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { kept } from '../../scripts/kept.ts';
import { type Filled, placedIn } from '../offer/fillTexts.ts';
import { ledBirths } from '../offer/ledTo.ts';
import { openWith } from './changes.tsx';
import { idsIn, ledKey } from './chosen.ts';
import type { AtForm, AtLink, Difference } from './types.ts';

/** With what the place gives put in, whole tables whole. */
const withMine = (texts: Texts, filled: Filled, isWanted: (key: string) => boolean): Texts => {
  const keys = new Set(filled.marks.map(({ at }) => at.split('.')[0] ?? at));
  return Object.fromEntries(
    Object.entries(texts).map(([key, text]): [string, Text] => [key, (keys.has(key) && isWanted(key) ? filled.texts[key] : undefined) ?? text]),
  );
};

/** Tells what would change before it does. */
const LinkBar: AtLink['Bar'] = ({ link, reach, onUse }) => {
  const [list, setList] = useState<readonly Difference[] | null>(null);
  const way = reach();
  const differences = () => (way ? link.differences(way.now()) : []);
  const use = () => {
    if (!way) return;
    link.use(way.now(), way);
    onUse();
  };
  const count = differences().length;
  return (
    <div class="place-link">
      <p>
        These are the figures of a link.{' '}
        {count > 0 && list === null && (
          <button type="button" onClick={() => setList(differences())}>
            Use my place’s ({count} {count === 1 ? 'field' : 'fields'})
          </button>
        )}
      </p>
      {list !== null && (
        <>
          <dl>
            {list.map(({ label, now, mine }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>
                  {now}; yours: <b>{mine}</b>
                </dd>
              </div>
            ))}
          </dl>
          <p class="place-buttons">
            <button type="button" onClick={use}>
              Put these in
            </button>{' '}
            <button type="button" onClick={() => setList(null)}>
              Leave the link’s
            </button>
          </p>
        </>
      )}
    </div>
  );
};

export function atLink(atForm: AtForm): AtLink {
  const { calculator, filledIn, marksOf, take } = atForm;
  const { inputs } = calculator;
  let isOthers = false;
  /** What is still asked is no fault of what stands beside it. */
  const isFine = (texts: Texts, system: UnitSystem): boolean => refusalsIn(calculator, texts, system).every(({ at }) => textAt(texts, at) === '');
  /** The same, without what the form refuses beside the figures that stay: dates of a link hold to its own today. */
  const withAllowed = (texts: Texts, filled: Filled, system: UnitSystem, isWanted: (key: string) => boolean): Texts => {
    const all = withMine(texts, filled, isWanted);
    if (isFine(all, system)) return all;
    const undated = withMine(texts, filled, (key) => isWanted(key) && inputs[key]?.kind !== 'date');
    return isFine(undated, system) ? undated : all;
  };
  const mineIn = ({ form, system }: Pick<Change, 'form' | 'system'>, filled: Filled): Texts => withAllowed(form.this, filled, system, () => true);
  return {
    isOthers: () => isOthers,
    opened: (query, { form, named, system, isOwn }) => {
      if (isOwn) return { place: marksOf(filledIn) };
      const [led, ids = ''] = (kept('sessionStorage', ledKey) ?? '').split(' ');
      isOthers = led !== query;
      if (isOthers) return {};
      take(idsIn(ids));
      // Hay until turn-out counts from the day on which the grass ends, and not from the one on which the place begins to feed.
      const told = Object.entries(form.this).filter(([key, text]) => inputs[key]?.kind === 'date' && named.has(key) && text !== '');
      const held = holding(calculator, Object.fromEntries(told));
      const filled = filledIn(system, held);
      const isBlank = (key: string): boolean => form.this[key] === '';
      const all = withAllowed(form.this, filled, system, (key) => isBlank(key) || !named.has(key));
      const hasHerd = filled.marks.some(({ offer }) => offer === 'herd.births');
      const born = hasHerd ? ledBirths(inputs, all, filled.texts) : all;
      const texts = [born, all].find((each) => isFine(each, system)) ?? withMine(form.this, filled, isBlank);
      const placed = placedIn(filled, texts).filter((at) => textAt(form.this, at) !== textAt(texts, at));
      return {
        form: { this: texts, that: form.that },
        linked: new Set(),
        blank: blankIn(texts, named),
        touched: new Set([...named].filter((key) => texts[key] !== '').concat(placed)),
        placed: new Set(placed),
        place: marksOf((other) => filledIn(other, held)),
      };
    },
    differences: (change) => {
      const { form, system } = change;
      const mine = mineIn(change, filledIn(system));
      return Object.entries(inputs).flatMap(([key, input]) => {
        if (!isShown(input, mine)) return [];
        const [now, then] = [tellInput(input, form.this[key], form.this, system), tellInput(input, mine[key], mine, system)];
        return JSON.stringify(form.this[key]) === JSON.stringify(mine[key]) || now === then ? [] : [{ label: input.label, now, mine: then }];
      });
    },
    use: (change, reach) => {
      const filled = filledIn(change.system);
      openWith(atForm, change, reach, { texts: mineIn(change, filled), filled });
      isOthers = false;
    },
    Bar: LinkBar,
  };
}
