import { useState } from 'preact/hooks';
import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Texts } from '../../../calculators/kit/state.ts';
import { localDay } from '../../../calculators/units/days.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import { type Keepable, keepableOf, withPasture, withWater } from '../offer/keepable.ts';
import type { Goes } from '../offer/puts.ts';
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
  /** The pastures and the water that are chosen above the form. */
  readonly chosenIds: readonly string[];
  readonly placePage: string;
  /** Opens what was kept. */
  readonly onKept: (place: Place) => void;
  readonly store: Store;
  /** Nothing where there is no place of one’s own yet: the invented one takes nothing in. */
  readonly own: Place | undefined;
  readonly blank: Place;
  readonly fresh: Goes;
}

interface WhichProps {
  readonly id: string;
  readonly word: 'pasture' | 'water';
  readonly of: readonly { readonly id: string; readonly name: string }[];
  readonly picked: string;
  readonly freshId: string;
  readonly name: string;
  readonly onPick: (id: string) => void;
  readonly onName: (name: string) => void;
}
/** Which of several a figure goes to, or what a new one is called. */
function Which({ id, word, of, picked, freshId, name, onPick, onName }: WhichProps) {
  return (
    <>
      {of.length > 0 && (
        <p class="keep-name">
          <label for={id}>Which {word}</label>
          <select id={id} autocomplete="off" onChange={(event) => onPick(event.currentTarget.value)}>
            {of.map((each) => (
              <option key={each.id} value={each.id} selected={each.id === picked}>
                {each.name}
              </option>
            ))}
            <option value={freshId} selected={picked === freshId}>
              A new one
            </option>
          </select>
        </p>
      )}
      {picked === freshId && (
        <p class="keep-name">
          <label for={`${id}-name`}>Name of the {word}</label>
          <input id={`${id}-name`} type="text" autocomplete="off" value={name} onInput={(event) => onName(event.currentTarget.value)} />
        </p>
      )}
    </>
  );
}
const named = (name: string, otherwise: string): string => name.trim().slice(0, 200) || otherwise;

/** What a form knows and the place does not, ticked, a name if there is no place yet, and one button. */
export function KeepPanel({ id, calculator, texts, system, isOwn, chosenIds, placePage, onKept, store, own, blank, fresh }: PanelProps) {
  const base = own ?? blank;
  const chosenOf = (of: WhichProps['of']): string | undefined => {
    const ids = of.flatMap(({ id: each }) => (own && chosenIds.includes(each) ? [each] : []));
    return ids.length === 1 ? ids[0] : undefined;
  };
  const [pastureId, setPasture] = useState(chosenOf(base.pastures) ?? fresh.pastureId);
  // A form opens with the only water that there is.
  const [waterId, setWater] = useState((base.water.length === 1 ? base.water[0]?.id : chosenOf(base.water)) ?? fresh.waterId);
  const [pastureName, setPastureName] = useState(`Pasture ${base.pastures.length + 1}`);
  const [waterName, setWaterName] = useState(base.water.length === 0 ? 'Water' : `Water ${base.water.length + 1}`);
  const [name, setName] = useState('');
  const [left, setLeft] = useState<Readonly<Record<string, boolean>>>({});
  const [told, setTold] = useState('');
  const [isKept, setKept] = useState(false);
  const list = keepableOf({ calculator, texts, system, isOwn, place: base, pastureId, waterId, todayDay: localDay(new Date()), newId });
  const isTicked = ({ key, replaces }: Keepable): boolean => left[key] ?? !replaces;
  const picked = list.filter(isTicked);
  const isOf = (subject: Keepable['of']): boolean => picked.some(({ of }) => of === subject);
  const write = async () => {
    if (!own && name.trim() === '') {
      setTold('The place needs a name. Type what you call it.');
      return;
    }
    const begun = own ? base : { ...base, name: name.trim().slice(0, 200) };
    const onGround = isOf('pasture') ? withPasture(begun, pastureId, named(pastureName, 'Pasture')) : begun;
    const start = isOf('water') ? withWater(onGround, waterId, named(waterName, 'Water')) : onGround;
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
      {isOf('pasture') && (
        <Which
          {...{ id: `${id}-keep-pasture`, word: 'pasture', of: base.pastures, picked: pastureId, freshId: fresh.pastureId, name: pastureName }}
          onPick={setPasture}
          onName={setPastureName}
        />
      )}
      {isOf('water') && (
        <Which
          {...{ id: `${id}-keep-water`, word: 'water', of: base.water, picked: waterId, freshId: fresh.waterId, name: waterName }}
          onPick={setWater}
          onName={setWaterName}
        />
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
