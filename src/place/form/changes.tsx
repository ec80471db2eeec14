// What a tap or a key asks of an open place: another choice of what it has, and what stands beside a field that holds something else. Fetched once the form is live, or with a link.
import type { VNode } from 'preact';
import { hasSameRows, movedTexts } from '../../../calculators/kit/movedTexts.ts';
import { type Texts, withPlaceOf } from '../../../calculators/kit/state.ts';
import { tellInput } from '../../../calculators/kit/summary.ts';
import { withTextAt } from '../../../calculators/kit/withTextAt.ts';
import type { Change, Reach } from '../../../calculators/ui/formProps.ts';
import type { PlaceMarks } from '../../../calculators/ui/props.ts';
import { keep, kept, visitKey } from '../../scripts/kept.ts';
import { type Filled, placedIn } from '../offer/fillTexts.ts';
import type { Mark } from '../offer/offered.ts';
import { ledKey } from './chosen.ts';
import type { AtForm } from './types.ts';

/** Opens the form anew with texts that the place has a part in; `gone` are fields that it had put in before. */
export function openWith(
  { calculator, filledIn, marksOf }: AtForm,
  change: Change,
  reach: Reach,
  { texts, filled, gone = new Set() }: { readonly texts: Texts; readonly filled: Filled; readonly gone?: ReadonlySet<string> },
): void {
  const placed = placedIn(filled, texts);
  const { form } = change;
  const kept = [...change.touched].filter((path) => !gone.has(path));
  reach.open({
    ...change,
    form: { this: texts, that: form.that && withPlaceOf(calculator.inputs, texts, form.that) },
    touched: new Set([...kept, ...placed]),
    placed: new Set(placed),
    place: marksOf(filledIn),
    notices: [],
  });
}

/** Another choice: what the place had put in goes with it, what somebody typed stays. */
export function chooseAt(form: AtForm, ids: readonly string[], reach: Reach): void {
  const change = reach.now();
  const before = form.filledIn(change.system);
  form.take(ids);
  const filled = form.filledIn(change.system);
  openWith(form, change, reach, {
    texts: movedTexts(change.form.this, before.texts, filled.texts),
    filled,
    gone: new Set(before.marks.map(({ at }) => at).filter((at) => change.placed.has(at))),
  });
  // It may come a while after the tap: what takes a step of it for Undo hears of it now.
  form.box.dispatchEvent(new Event('change'));
}

interface Live {
  readonly root: Element;
  readonly id: string;
  readonly placeId: string;
  readonly reach: () => Reach | undefined;
  /** Nothing where the figures are not the place's. */
  readonly chosen: () => readonly string[] | undefined;
}
/** Where a result leads, the choice of pasture goes along, and the next form knows whose figures it opens with. In a form that was opened from a visit it can be kept there. */
export function goOn({ box, calculator }: AtForm, { root, id, placeId, reach, chosen }: Live): void {
  box.addEventListener('click', ({ target }) => {
    const [lead, ids] = [target instanceof Element ? target.closest<HTMLAnchorElement>('.leads a') : null, chosen()];
    if (lead && ids) keep('sessionStorage', ledKey, `${new URL(lead.href).search.slice(1)} ${ids.join(',')}`);
  });
  if (kept('sessionStorage', visitKey) === null) return;
  void import('./keepResult.tsx')
    .then(({ drawVisitBar }) =>
      drawVisitBar(root, placeId, (host) => {
        const change = reach()?.now();
        return change && { host, box, id, calculator, change };
      }),
    )
    .catch((error: unknown) => console.info(error));
}

/** The view of the place's page where an offer can be changed. */
const views: Readonly<Record<string, string>> = {
  pasture: 'ground',
  pastures: 'ground',
  layer: 'ground',
  herd: 'stock',
  hay: 'feed',
  prices: 'feed',
  water: 'water',
  tools: 'tools',
  record: 'record',
  rain: 'record',
  earlier: 'visits',
};
const viewOf = (offer: Mark['offer']): string => (offer === 'rain.station' ? undefined : views[offer.slice(0, offer.indexOf('.'))]) ?? 'season';

/** Beside a field that holds something else than the place: what the place has, and the way to it. */
export function otherwiseAt(
  { calculator, isDemo, placePage }: AtForm,
  filled: Filled,
  { at, offer, text }: Mark,
  ...[, texts, system, put]: Parameters<PlaceMarks['toldAt']>
): VNode | undefined {
  const [key = '', , column] = at.split('.');
  if (!hasSameRows(texts[key], filled.texts[key])) return undefined;
  const input = calculator.inputs[key];
  const cell = input?.kind === 'rows' ? input.columns[column ?? ''] : input;
  if (!cell || cell.kind === 'months' || cell.kind === 'record') return undefined;
  return (
    <>
      yours{' '}
      <span class="place-says">
        {isDemo ? 'the demo place' : 'your place'}: {tellInput(cell, text, texts, system)} ·{' '}
        <button type="button" class="quiet" onClick={() => put(withTextAt(texts, at, text))}>
          use it
        </button>{' '}
        · <a href={`${placePage}#/${viewOf(offer)}`}>change it at my place</a>
      </span>
    </>
  );
}
