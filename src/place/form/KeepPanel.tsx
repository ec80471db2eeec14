import { useState } from 'preact/hooks';
import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Texts } from '../../../calculators/kit/state.ts';
import { localDay } from '../../../calculators/units/days.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import { type Keepable, keepableOf, withPasture } from '../offer/keepable.ts';
import { newId } from '../store/ids.ts';
import { placeKind } from '../store/kinds.ts';
import { roomOf, stateWords } from '../store/storageState.ts';
import type { Store } from '../store/store.ts';

export interface PanelProps {
  readonly id: string;
  readonly calculator: Calculator;
  readonly texts: Texts;
  readonly system: UnitSystem;
  /** Did the reader put it in? What is only an example, or came from the place, is nothing to keep. */
  readonly isOwn: (path: string) => boolean;
  /** The pastures that are chosen above the form. */
  readonly pastureIds: readonly string[];
  readonly placePage: string;
  /** Opens what was kept. */
  readonly onKept: (place: Place) => void;
  readonly store: Store;
  /** Nothing where there is no place of one’s own yet: the invented one takes nothing in. */
  readonly own: Place | undefined;
  readonly blank: Place;
  readonly newPastureId: string;
}
/** What a form knows and the place does not, ticked, a name if there is no place yet, and one button. */
export function KeepPanel({ id, calculator, texts, system, isOwn, pastureIds, placePage, onKept, store, own, blank, newPastureId }: PanelProps) {
  const base = own ?? blank;
  const [pastureId, setPasture] = useState(pastureIds.length === 1 && own ? (pastureIds[0] ?? newPastureId) : newPastureId);
  const [pastureName, setPastureName] = useState(`Pasture ${base.pastures.length + 1}`);
  const [name, setName] = useState('');
  const [left, setLeft] = useState<Readonly<Record<string, boolean>>>({});
  const [told, setTold] = useState('');
  const [isKept, setKept] = useState(false);
  const list = keepableOf({ calculator, texts, system, isOwn, place: base, pastureId, todayDay: localDay(new Date()), newId });
  const isTicked = ({ key, replaces }: Keepable): boolean => left[key] ?? !replaces;
  const picked = list.filter(isTicked);
  const isGround = picked.some(({ isOfPasture }) => isOfPasture);
  const write = async () => {
    if (!own && name.trim() === '') {
      setTold('The place needs a name. Type what you call it.');
      return;
    }
    const named = own ? base : { ...base, name: name.trim().slice(0, 200) };
    const start = isGround ? withPasture(named, pastureId, pastureName.trim().slice(0, 200) || 'Pasture') : named;
    const after = picked.reduce((place, { put }) => put(place), start);
    const [saved] = await store.save(placeKind, [{ before: own ?? null, after }]);
    if (saved?.is !== 'saved') {
      setTold(stateWords(store.state()) ?? 'It could not be kept: the place was changed or taken away in another window. Load this page again.');
      return;
    }
    const words = stateWords(store.state());
    onKept(after);
    setKept(true);
    setTold(words ?? `Kept in ${after.name}. Calculators open with it from now on.`);
    if (!own) void roomOf(navigator.storage, true);
  };
  if (isKept)
    return (
      <p class="told" role="status">
        {told} <a href={placePage}>My place</a>
      </p>
    );
  if (list.length === 0)
    return (
      <p class="told" role="status">
        {own ? `There is nothing here that ${own.name} does not know.` : 'Nothing here is yours yet. Put your own numbers over the example first.'}
      </p>
    );
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
    >
      <h3>{own ? `Keep in ${own.name}` : 'Keep as my place'}</h3>
      <ul>
        {list.map((each) => (
          <li key={each.key}>
            <label>
              <input
                type="checkbox"
                autocomplete="off"
                checked={isTicked(each)}
                onChange={(event) => setLeft({ ...left, [each.key]: event.currentTarget.checked })}
              />
              <span>
                {each.label}: <b>{each.shown}</b>
                {each.replaces && ' (in place of what stands there)'}
              </span>
            </label>
          </li>
        ))}
      </ul>
      {isGround && (
        <>
          {base.pastures.length > 0 && (
            <p class="keep-name">
              <label for={`${id}-keep-pasture`}>Which pasture</label>
              <select id={`${id}-keep-pasture`} autocomplete="off" onChange={(event) => setPasture(event.currentTarget.value)}>
                {base.pastures.map((each) => (
                  <option key={each.id} value={each.id} selected={each.id === pastureId}>
                    {each.name}
                  </option>
                ))}
                <option value={newPastureId} selected={pastureId === newPastureId}>
                  A new one
                </option>
              </select>
            </p>
          )}
          {pastureId === newPastureId && (
            <p class="keep-name">
              <label for={`${id}-keep-pasture-name`}>Name of the pasture</label>
              <input
                id={`${id}-keep-pasture-name`}
                type="text"
                autocomplete="off"
                value={pastureName}
                onInput={(event) => setPastureName(event.currentTarget.value)}
              />
            </p>
          )}
        </>
      )}
      {!own && (
        <p class="keep-name">
          <label for={`${id}-keep-name`}>Name of the place</label>
          <input id={`${id}-keep-name`} type="text" autocomplete="off" value={name} onInput={(event) => setName(event.currentTarget.value)} />
        </p>
      )}
      <p class="keep-how">It stays in this browser, on this device. No link carries it.</p>
      <button type="submit" disabled={picked.length === 0}>
        Keep
      </button>
      <p class="told" role="status">
        {told}
      </p>
    </form>
  );
}
