// "Keep as my place", under a result: what this form knows and the place does not, ticked, and one button. Fetched when it is tapped.
import { render } from 'preact';
import { isTouched } from '../../../calculators/ui/touched.ts';
import { keep, kept, placeKey, sharedKey } from '../../scripts/kept.ts';
import { newId } from '../store/ids.ts';
import { chosenIn, placePageOf } from './chosen.ts';
import { KeepPanel } from './KeepPanel.tsx';
import { KeepPlan } from './KeepPlan.tsx';
import { keepAddress, sharesStore } from './keepAddress.ts';
import { blankPlace, openHere, openPlaceIn } from './openHere.ts';
import type { Keeping } from './types.ts';

/** Draws the list under the result; where this page can keep nothing, the way to the one that can. */
export async function keepPlace({ host, box, id, calculator, change }: Keeping): Promise<void> {
  const panel = host.querySelector('.keep-place') ?? document.createElement('div');
  panel.className = 'keep-place';
  host.append(panel);
  render(null, panel);
  const byAddress = (why: string): void =>
    render(
      <p class="told" role="status">
        {why} <a href={keepAddress(placePageOf(box), calculator.slug, change.link)}>Keep it at the page of your place</a>.
      </p>,
      panel,
    );
  if (!sharesStore(location.protocol, kept('localStorage', sharedKey))) {
    byAddress('From a folder, this page and the page of your place may each have a store of their own.');
    return;
  }
  const store = await openHere();
  if (store.state().is === 'memory') {
    byAddress('This page can keep nothing here.');
    return;
  }
  const place = await openPlaceIn(store);
  const own = place?.isDemo ? undefined : place;
  const { form, system, touched, placed, outcome } = change;
  const isOwn = (path: string): boolean => isTouched(touched, path) && !placed.has(path);
  const onKept = ({ id: kept }: { readonly id: string }): void => {
    if (store.state().is === 'kept') keep('localStorage', placeKey, kept);
  };
  const chosenIds = chosenIn(box);
  render(
    <>
      <KeepPanel
        {...{ id, calculator, system, isOwn, store, own, onKept, chosenIds, texts: form.this, placePage: placePageOf(box) }}
        blank={blankPlace()}
        fresh={{ pastureId: newId(), waterId: newId() }}
      />
      {own && outcome && (
        <KeepPlan store={store} place={own} pastureIds={chosenIds} results={outcome.values} record={`${placePageOf(box)}#/record`} />
      )}
    </>,
    panel,
  );
}
