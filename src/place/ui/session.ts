import type { Picked } from '../files/merge.ts';
import type { Pictures } from '../files/pictures.ts';
import type { Belongings } from '../model/belongings.ts';
import { placeVersion } from '../model/migrations/place.ts';
import type { Photo } from '../model/photo.ts';
import type { Place } from '../model/place.ts';
import type { Aside } from '../store/aside.ts';
import type { Saved } from '../store/decide.ts';
import { type Editing, editing } from '../store/editing.ts';
import { newId, randomMark } from '../store/ids.ts';
import type { Kind } from '../store/kind.ts';
import { placeKind } from '../store/kinds.ts';
import type { Kept } from '../store/records.ts';
import { roomOf, type StorageState } from '../store/storageState.ts';
import type { Batch, Store } from '../store/store.ts';
import type { Begun } from '../visit/newVisit.ts';
import type { Backups } from './backups.ts';
import { type Data, dataAt, isFields, isList, withChanges } from './edit.ts';
import type { OpenMark } from './openMark.ts';

/** Something that was taken away and can come back. */
interface Undo {
  readonly label: string;
  readonly path: readonly string[];
  readonly item: Data;
  readonly index: number;
}
/** The name of a pasture stays with the place, for what was told of it; its last 500 do. */
function nameStays(place: Place | undefined, item: Data): readonly Change[] {
  if (!isFields(item)) return [];
  const { id, name } = item;
  const others = (place?.pasturesTakenAway ?? []).filter((each) => each.id !== id);
  return [{ path: ['pasturesTakenAway'], to: [...others.slice(-499), { id, name }] }];
}
/** What the person must know of the open place, and can do about it. */
export type Trouble = 'gone' | 'newer' | 'damaged';
/** The rain that forms kept by themselves, until it was offered to a place. */
export interface OldRain {
  readonly read: () => string | undefined;
  readonly settle: () => void;
}
interface SessionParts {
  readonly store: Store;
  readonly oldRain: OldRain;
  readonly mark: OpenMark;
  readonly backups: Backups;
  readonly by: string;
  readonly now: () => Date;
}
export type Change = { readonly path: readonly string[]; readonly to: Data };

/** One window at work on what is kept: which places there are, which is open, what changes. Views draw it and are told when it has changed. */
export class Session {
  places: readonly Place[] = [];
  newer: readonly unknown[] = [];
  aside: readonly Aside[] = [];
  undo: Undo | undefined;
  /** Or of the demo place nothing could be loaded, or not its visits. */
  trouble: Trouble | 'noDemo' | 'noVisits' | undefined;
  /** Lines of the record, visits and notes of the open place that were changed since it was last saved as a file; looked up once that is long ago. */
  changedBeside = 0;
  private readonly parts: SessionParts;
  private editing: Editing<Place> | undefined;
  private readonly listeners = new Set<() => void>();
  private readonly flushes = new Set<() => Promise<unknown>>();

  constructor(parts: SessionParts) {
    this.parts = parts;
    parts.store.listen((told) => {
      if (!('store' in told)) this.tell();
      else if (told.store === 'places') void this.refresh();
    });
  }
  get store(): Store {
    return this.parts.store;
  }
  get oldRain(): OldRain {
    return this.parts.oldRain;
  }
  get backups(): Backups {
    return this.parts.backups;
  }
  get state(): StorageState {
    return this.parts.store.state();
  }
  /** The open place, as it stands in this window. */
  get place(): Place | undefined {
    return this.editing?.value();
  }
  get now(): Date {
    return this.parts.now();
  }
  listen(hear: () => void): () => void {
    this.listeners.add(hear);
    return () => this.listeners.delete(hear);
  }
  /** Has all views drawn anew. */
  tell(): void {
    for (const hear of this.listeners) hear();
  }

  /** Reads what is kept, and opens the place that was open. */
  async begin(): Promise<void> {
    await this.readAll();
    const id = this.parts.mark.read();
    this.work(this.places.find((each) => each.id === id) ?? this.places[0]);
    if (this.place !== undefined) this.parts.mark.write(this.place.id);
    this.tell();
    void this.countBeside();
  }
  /** Whether it is time to save the open place as a file. */
  isFileDue(): boolean {
    const { place } = this;
    return place !== undefined && this.state.is === 'kept' && this.backups.isDue(place, this.now, this.changedBeside);
  }
  private async countBeside(): Promise<void> {
    const { place } = this;
    const since = place && this.backups.since(place, this.now);
    this.changedBeside = 0;
    if (place === undefined || since === undefined) return;
    const kept = Object.values(await this.belongingsOf([place])).flat();
    if (this.place?.id !== place.id) return;
    this.changedBeside = kept.filter(({ changedAt }) => Date.parse(changedAt) > since.getTime()).length;
    this.tell();
  }
  private async readAll(): Promise<void> {
    const { records, newer } = await this.store.read(placeKind);
    this.places = records.toSorted((one, other) => one.name.localeCompare(other.name));
    this.newer = newer;
    this.aside = await this.store.aside();
  }
  private work(place: Place | undefined, isNew = false): void {
    this.trouble = undefined;
    this.undo = undefined;
    this.editing = place && editing(this.store, placeKind, place, isNew, (saved) => this.heardSaved(saved));
  }
  private heardSaved(saved: Saved<Place>): void {
    if (saved.is === 'gone' || saved.is === 'newer' || saved.is === 'damaged') this.trouble = saved.is;
    const place = this.place;
    if (place) this.places = this.places.map((each) => (each.id === place.id ? place : each));
    this.tell();
  }
  /** Another window has changed something: what it changed comes in, and what is typed here stays. */
  private async refresh(): Promise<void> {
    const id = this.place?.id;
    for (;;) {
      await this.editing?.flush();
      const before = this.editing?.value();
      await this.readAll();
      if (this.editing?.value() !== before) continue;
      const fresh = this.places.find((each) => each.id === id);
      if (fresh !== undefined) {
        const { undo } = this;
        this.work(fresh);
        this.undo = undo;
      } else if (id !== undefined) this.trouble = 'gone';
      break;
    }
    this.tell();
  }

  change(changes: readonly Change[]): void {
    const { editing: open } = this;
    if (open === undefined) return;
    open.set(withChanges(open.value(), changes));
    this.tell();
  }
  flush(): Promise<unknown> {
    return Promise.all([this.editing?.flush(), ...[...this.flushes].map((flush) => flush())]);
  }
  /** Another record is at work in this window: it is written when the place is. */
  alsoFlush(flush: () => Promise<unknown>): () => void {
    this.flushes.add(flush);
    return () => this.flushes.delete(flush);
  }
  /** A record that nobody has written yet. */
  newHead(): Begun {
    return { id: newId(), rev: 1, past: [`1-${randomMark()}`], changedBy: this.parts.by, changedAt: this.now.toISOString() };
  }
  /** Takes a thing out of a list, in a way that can be taken back. */
  takeAway(label: string, path: readonly string[], index: number): void {
    const list = dataAt(this.place, path);
    if (!isList(list)) return;
    const undo = { label, path, item: list[index], index };
    this.change([{ path, to: list.filter((_, each) => each !== index) }]);
    if (path.join() === 'pastures') this.change(nameStays(this.place, undo.item));
    this.undo = undo;
    this.tell();
  }
  putBack(): void {
    const { undo } = this;
    if (undo === undefined) return;
    const now = dataAt(this.place, undo.path);
    const list = isList(now) ? now : [];
    this.undo = undefined;
    this.change([{ path: undo.path, to: list.toSpliced(undo.index, 0, undo.item) }]);
  }
  forgetUndo(): void {
    this.undo = undefined;
    this.tell();
  }
  async open(id: string): Promise<void> {
    await this.flush();
    await this.readAll();
    this.work(this.places.find((each) => each.id === id));
    this.parts.mark.write(id);
    this.tell();
    void this.countBeside();
  }
  blank(name: string): Place {
    return { ...this.newHead(), v: placeVersion, name, soils: [], pastures: [], herd: [], water: [] };
  }
  /** A place that is new here, open at once. */
  async begins(place: Place): Promise<void> {
    await this.flush();
    this.places = [...this.places, place];
    this.work(place, true);
    this.parts.mark.write(place.id);
    this.tell();
    await this.flush();
    this.backups.begin(place.id, this.now);
    this.tell();
    this.askToStay([place]);
  }
  /** The browser’s promise, once something of one’s own is kept. Some ask a person first: nothing waits for it. */
  private askToStay(places: readonly Place[]): void {
    if (places.some(({ isDemo }) => isDemo !== true)) void roomOf(navigator.storage, true);
  }
  /** A place with what belongs to it, in one step, and open at once. */
  async beginsWith(place: Place, others: readonly Batch[]): Promise<void> {
    await this.store.saveAll([{ kind: placeKind, edits: [{ before: null, after: place }] }, ...others]);
    this.backups.begin(place.id, this.now);
    await this.open(place.id);
  }
  say(trouble: Session['trouble']): void {
    this.trouble = trouble;
    this.tell();
  }
  /** What is kept with some places, for what goes out with them. Only views of it hold it open. */
  async belongingsOf(places: readonly Place[]): Promise<Belongings> {
    const { noteKind, resultKind, rowKind, visitKind } = await import('../store/belongingKinds.ts');
    const ids = new Set(places.map(({ id }) => id));
    const of = async <T extends Kept & { readonly placeId: string }>(kind: Kind<T>): Promise<readonly T[]> =>
      (await this.store.read(kind)).records.filter(({ placeId }) => ids.has(placeId));
    return { rows: await of(rowKind), visits: await of(visitKind), results: await of(resultKind), notes: await of(noteKind) };
  }
  async photosOf(places: readonly Place[]): Promise<readonly Photo[]> {
    const { photoKind } = await import('../store/belongingKinds.ts');
    const ids = new Set(places.map(({ id }) => id));
    return (await this.store.read(photoKind)).records.filter(({ placeId }) => ids.has(placeId));
  }
  /** Takes the open place away for good with its record and its visits, in one transaction. */
  async throwAway(): Promise<void> {
    const { place } = this;
    if (place === undefined) return;
    await this.flush();
    this.editing = undefined;
    const { belongingsOf } = await import('../store/belongings.ts');
    await this.store.remove(placeKind, place.id, await belongingsOf(this.store, place.id));
    this.backups.forget(place.id);
    await this.readAll();
    this.work(this.places[0]);
    this.parts.mark.write(this.place?.id);
    this.tell();
  }
  /** It was taken away in another window while somebody worked on it here. */
  async keepAfterAll(): Promise<void> {
    const { place } = this;
    if (place !== undefined) await this.begins(place);
  }
  async bring(picked: readonly Picked[], pictures?: Pictures): Promise<readonly Saved<Kept>[]> {
    await this.flush();
    const { bringIn } = await import('../files/merge.ts');
    const saved = await bringIn(this.store, picked, pictures);
    await this.readAll();
    const id = this.place?.id ?? picked[0]?.coming.place.id;
    this.work(this.places.find((each) => each.id === id) ?? this.places[0]);
    this.parts.mark.write(this.place?.id);
    this.tell();
    this.askToStay(picked.map(({ coming }) => coming.place));
    return saved;
  }
  async dropAside(id: string): Promise<void> {
    await this.store.dropAside(id);
    await this.readAll();
    this.tell();
  }
}
