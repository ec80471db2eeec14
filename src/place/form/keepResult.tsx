// "Keep this result": a calculation as it stands, into a visit. Fetched when it is tapped, or where a visit is open.
import { render } from 'preact';
import { useState } from 'preact/hooks';
import { leavesRecord } from '../../../calculators/kit/link.ts';
import { localDay } from '../../../calculators/units/days.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { forget, keep, kept, placeKey, sharedKey, visitKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';
import { placeKind } from '../store/kinds.ts';
import { roomOf, stateWords } from '../store/storageState.ts';
import type { Batch, Store } from '../store/store.ts';
import { resultKind, visitKind } from '../store/visitKinds.ts';
import { keptResult } from '../visit/keptResult.ts';
import { newVisit } from '../visit/newVisit.ts';
import { dayWords, visitTold } from '../visit/visitWords.ts';
import { chosenIn, placePageOf } from './chosen.ts';
import { sharesStore } from './keepAddress.ts';
import { begin, blankPlace, openHere, openPlaceIn } from './openHere.ts';
import type { Keeping } from './types.ts';

const today = (): string => isoDay(localDay(new Date()));
/** More than these nobody looks through here; older ones can be opened at the place. */
const mostVisits = 6;

/** Sources as the page cites them. A form in a guide has none of its own beside it. */
const sourcesOn = (box: HTMLElement): readonly string[] =>
  box.dataset['ownsAddress'] === undefined
    ? []
    : [...document.querySelectorAll('.sources .references li')].map((each) => {
        const entry = each.cloneNode(true);
        // A link beside it tells which copy was read, and not what the work is.
        if (entry instanceof Element) entry.querySelector('a[href*="/sources/"]')?.remove();
        return (entry.textContent ?? '').replace(/\s+/g, ' ').trim();
      });

interface Into {
  readonly place: Place;
  readonly isNewPlace: boolean;
  readonly visit: Visit;
  readonly isNewVisit: boolean;
}
/** Writes result, visit and, where it is new, place in one transaction; says what hinders it. */
async function write(
  store: Store,
  { box, calculator, change }: Keeping,
  { place, isNewPlace, visit, isNewVisit }: Into,
): Promise<string | undefined> {
  const { outcome, other, saying, between, stamp, system, link } = change;
  if (!outcome) return 'There is no result yet. Answer what is asked first.';
  const pastureIds = chosenIn(box).filter((id) => place.pastures.some((each) => each.id === id));
  const result = keptResult({
    begun: begin(),
    calculator,
    link,
    outcome,
    other,
    titles: saying,
    between,
    system,
    placeId: place.id,
    visitId: visit.id,
    pastureIds,
    keptDay: today(),
    edition: box.dataset['edition'] ?? 'not said',
    sources: sourcesOn(box),
    stamp: stamp.is === 'yours' ? '' : stamp.text,
  });
  const after: Visit = {
    ...visit,
    pastureIds: [...new Set([...visit.pastureIds, ...pastureIds])],
    results: [...visit.results, { id: result.id, slug: result.slug, title: result.title }],
  };
  const batches: readonly Batch[] = [
    ...(isNewPlace ? [{ kind: placeKind, edits: [{ before: null, after: place }] }] : []),
    { kind: visitKind, edits: [{ before: isNewVisit ? null : visit, after }] },
    { kind: resultKind, edits: [{ before: null, after: result }] },
  ];
  const saved = await store.saveAll(batches);
  const words = stateWords(store.state());
  if (words !== undefined) return words;
  if (saved.some(({ is }) => is !== 'saved'))
    return 'It could not be kept: the visit was changed or taken away in another window. Load this page again.';
  if (isNewPlace) keep('localStorage', placeKey, place.id);
  keep('sessionStorage', visitKey, visit.id);
  return undefined;
}

const isNew = 'new';
interface PanelProps {
  readonly keeping: Keeping;
  readonly store: Store;
  readonly place: Place | undefined;
  readonly visits: readonly Visit[];
  readonly blank: Place;
}
function Panel({ keeping, store, place, visits, blank }: PanelProps) {
  const { id, box } = keeping;
  const open = visits.find((each) => each.id === kept('sessionStorage', visitKey));
  const [into, setInto] = useState(open?.id ?? visits[0]?.id ?? isNew);
  const [name, setName] = useState('');
  const [told, setTold] = useState('');
  const [keptIn, setKeptIn] = useState<Visit | undefined>(undefined);
  const [isBusy, setBusy] = useState(false);
  const keepIt = async () => {
    if (place === undefined && name.trim() === '') {
      setTold('The place needs a name. Type what you call it.');
      return;
    }
    setBusy(true);
    const owner = place ?? { ...blank, name: name.trim().slice(0, 200) };
    const old = visits.find((each) => each.id === into);
    const visit = old ?? newVisit(begin(), owner.id, today(), visits[0]?.by);
    const problem = await write(store, keeping, { place: owner, isNewPlace: place === undefined, visit, isNewVisit: old === undefined });
    setBusy(false);
    setTold(problem ?? `Kept in the visit of ${dayWords(visit.day)}.`);
    if (problem === undefined) setKeptIn(visit);
    if (place === undefined && problem === undefined) void roomOf(navigator.storage, true);
  };
  if (keptIn !== undefined)
    return (
      <p class="told" role="status">
        {told} <a href={`${placePageOf(box)}#/visit/${keptIn.id}`}>Open the visit</a>
      </p>
    );
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void keepIt();
      }}
    >
      <h3>Keep this result</h3>
      {visits.length > 0 && (
        <p class="keep-name">
          <label for={`${id}-keep-visit`}>In which visit</label>
          <select id={`${id}-keep-visit`} autocomplete="off" onChange={(event) => setInto(event.currentTarget.value)}>
            {visits.map((each) => (
              <option key={each.id} value={each.id} selected={each.id === into}>
                Visit of {visitTold(place, each, visits)}
              </option>
            ))}
            <option value={isNew} selected={into === isNew}>
              A new visit, today
            </option>
          </select>
        </p>
      )}
      {place === undefined && (
        <p class="keep-name">
          <label for={`${id}-keep-visit-place`}>Name of the place</label>
          <input id={`${id}-keep-visit-place`} type="text" autocomplete="off" value={name} onInput={(event) => setName(event.currentTarget.value)} />
        </p>
      )}
      <p class="keep-how">
        The words and figures stay as they stand now, with the link that opens them. It all stays in this browser, on this device.
        {leavesRecord(keeping.calculator.inputs, keeping.change.form.this) && ' The record itself is in no link: its result is what is kept.'}
      </p>
      <button type="submit" disabled={isBusy}>
        Keep
      </button>
      <p class="told" role="status">
        {told}
      </p>
    </form>
  );
}

const visitsOf = async (store: Store, place: Place | undefined): Promise<readonly Visit[]> =>
  place === undefined
    ? []
    : (await store.read(visitKind)).records
        .filter(({ placeId }) => placeId === place.id)
        .toSorted((one, other) => other.day.localeCompare(one.day) || other.changedAt.localeCompare(one.changedAt));

/** Draws, under the result, where it can be kept. */
export async function keepResult(keeping: Keeping): Promise<void> {
  const panel = keeping.host.querySelector('.keep-place') ?? document.createElement('div');
  panel.className = 'keep-place';
  keeping.host.append(panel);
  render(null, panel);
  if (!sharesStore(location.protocol, kept('localStorage', sharedKey))) {
    render(
      <p class="told" role="status">
        From a folder, this page and the page of your visits may each have a store of their own.{' '}
        {document.documentElement.dataset['keeps'] !== 'by-page' && (
          <>
            Open <a href={placePageOf(keeping.box)}>the page of your place</a> once and come back: they find out by that.{' '}
          </>
        )}
        Where they have, no result can go from here into a visit: copy the note, or print the sheet.
      </p>,
      panel,
    );
    return;
  }
  const store = await openHere();
  const place = await openPlaceIn(store);
  const all = await visitsOf(store, place);
  const open = all.find(({ id }) => id === kept('sessionStorage', visitKey));
  const visits = [...(open ? [open] : []), ...all.filter((each) => each !== open)].slice(0, mostVisits);
  render(<Panel keeping={keeping} store={store} place={place} visits={visits} blank={blankPlace()} />, panel);
}

interface BarProps {
  readonly store: Store;
  readonly visit: Visit;
  readonly place: Place;
  readonly keeping: () => Keeping | undefined;
  readonly onLeave: () => void;
}
function VisitBar({ store, visit, place, keeping, onLeave }: BarProps) {
  const [told, setTold] = useState('');
  const [isBusy, setBusy] = useState(false);
  const keepIt = async () => {
    const now = keeping();
    if (!now) return;
    setBusy(true);
    const [fresh] = (await store.pick(visitKind, [visit.id])).records;
    const problem = fresh
      ? await write(store, now, { place, isNewPlace: false, visit: fresh, isNewVisit: false })
      : 'That visit was taken away in another window. “Keep this result” below takes another.';
    setBusy(false);
    setTold(problem ?? '');
    if (problem === undefined) location.href = `${placePageOf(now.box)}#/visit/${visit.id}`;
  };
  return (
    <>
      <button type="button" disabled={isBusy} onClick={() => void keepIt()}>
        Keep in this visit
      </button>{' '}
      <span>Visit of {dayWords(visit.day)}</span>{' '}
      <button type="button" class="quiet" onClick={onLeave}>
        Not now
      </button>
      <p class="told" role="status">
        {told}
      </p>
    </>
  );
}

/** Beside the answer, where a form was opened from a visit. */
export async function drawVisitBar(root: Element, placeId: string, keeping: (host: Element) => Keeping | undefined): Promise<void> {
  const id = kept('sessionStorage', visitKey);
  if (id === null) return;
  const store = await openHere();
  const place = await openPlaceIn(store);
  const [visit] = (await store.pick(visitKind, [id])).records;
  const answer = root.querySelector('.answer');
  if (place?.id !== placeId || visit?.placeId !== placeId || !answer) {
    store.close();
    return;
  }
  const bar = document.createElement('div');
  bar.className = 'visit-bar';
  answer.after(bar);
  const leave = () => {
    forget('sessionStorage', visitKey);
    render(null, bar);
    bar.remove();
    store.close();
  };
  render(<VisitBar store={store} visit={visit} place={place} keeping={() => keeping(bar)} onLeave={leave} />, bar);
}
