import { useEffect, useState } from 'preact/hooks';
import type { Place } from '../model/place.ts';
import { readRow } from '../model/readRow.ts';
import { type Row, rowVersion } from '../model/row.ts';
import type { RowBody } from '../record/bringLines.ts';
import type { Edit } from '../store/decide.ts';
import { type Editing, editing } from '../store/editing.ts';
import { rowKind } from '../store/rowKind.ts';
import { type Changes, dataWith } from './edit.ts';
import type { Session } from './session.ts';

/** What was done last, and how it is taken back. */
interface Done {
  /** Of the line that was taken out, else that of what was done last. */
  readonly id: string;
  readonly says: string;
  /** The lines that it wrote anew. */
  readonly made: readonly Row[];
  readonly takeBack: () => Promise<void>;
}
const isGone = (saved: { readonly is: string }): boolean => saved.is === 'gone' || saved.is === 'newer' || saved.is === 'damaged';

/** The record of one place, while a view of it is open. What is changed counts here at once and is on its way into the store. */
export class Rows {
  all: readonly Row[] = [];
  done: Done | undefined;
  /** Lines that were taken out: each can come back as long as the view is open. The last one stands first. */
  taken: readonly Done[] = [];
  /** Lines that another window took away, or that cannot be written, while they were changed here. */
  trouble: string | undefined;
  private readonly session: Session;
  private readonly placeId: string;
  private readonly heard: () => void;
  private readonly stop: () => void;

  constructor(session: Session, placeId: string, heard: () => void) {
    this.session = session;
    this.placeId = placeId;
    this.heard = heard;
    this.stop = session.store.listen((told) => {
      if ('store' in told && told.store === 'rows') void this.read();
    });
    addEventListener('pagehide', this.flush);
    addEventListener('visibilitychange', this.flush, true);
  }
  /** One line while somebody types in it. */
  private readonly typing = new Map<string, Editing<Row>>();
  private readonly flush = (): void => {
    for (const each of this.typing.values()) void each.flush();
  };
  close(): void {
    this.stop();
    this.flush();
    removeEventListener('pagehide', this.flush);
    removeEventListener('visibilitychange', this.flush, true);
  }
  /** What is typed counts here at once; the store has it a little behind. What would make no line of it is not taken. */
  type(row: Row, changes: Changes): void {
    const read = readRow(dataWith(row, changes));
    if (read.is !== 'read') return;
    const open =
      this.typing.get(row.id) ??
      editing(this.session.store, rowKind, row, false, (saved) => {
        if (isGone(saved)) this.lost(row.id);
        const now = this.typing.get(row.id)?.value();
        if (now !== undefined && !isGone(saved)) this.put(now);
        this.heard();
      });
    this.typing.set(row.id, open);
    open.set(read.value);
    this.put(read.value);
    this.heard();
  }
  private lost(id: string): void {
    this.typing.delete(id);
    this.drop([id]);
    this.trouble = 'A line was taken away in another window while you changed it. What you see is what is kept.';
  }
  async read(): Promise<void> {
    await Promise.all([...this.typing.values()].map((each) => each.flush()));
    this.typing.clear();
    const { records } = await this.session.store.read(rowKind);
    this.all = records.filter(({ placeId }) => placeId === this.placeId);
    this.heard();
  }
  find(id: string): Row | undefined {
    return this.all.find((row) => row.id === id);
  }
  private put(row: Row): void {
    this.all = this.find(row.id) === undefined ? [...this.all, row] : this.all.map((each) => (each.id === row.id ? row : each));
  }
  private drop(ids: readonly string[]): void {
    this.all = this.all.filter(({ id }) => !ids.includes(id));
  }

  /** All or nothing, in one transaction. */
  async write(edits: readonly Edit<Row>[]): Promise<void> {
    for (const { after } of edits) this.put(after);
    this.trouble = undefined;
    this.heard();
    const saved = await this.session.store.save(rowKind, edits);
    for (const [index, each] of saved.entries()) {
      const after = edits[index]?.after;
      if (after === undefined) continue;
      if (isGone(each)) this.lost(after.id);
      // Typed on meanwhile: what was typed stays, and is written behind this.
      if ((each.is === 'saved' || each.is === 'held') && this.find(after.id) === after) this.put(each.value);
    }
    this.heard();
  }
  made(body: RowBody): Row {
    return { ...body, ...this.session.newHead(), v: rowVersion, placeId: this.placeId };
  }
  /** New lines, and changes of others with them, that can be taken back together. */
  async change(
    says: string,
    bodies: readonly RowBody[],
    changes: readonly { readonly before: Row; readonly after: Row }[] = [],
  ): Promise<readonly Row[]> {
    const made = bodies.map((body) => this.made(body));
    this.done = { id: 'last', says, made, takeBack: () => this.undo(made, changes) };
    await this.write([...changes, ...made.map((after) => ({ before: null, after }))]);
    return made;
  }
  private async undo(made: readonly Row[], changes: readonly { readonly before: Row; readonly after: Row }[]): Promise<void> {
    this.done = undefined;
    await this.takeOut(made.map(({ id }) => id));
    const back = changes.flatMap(({ before }): readonly Edit<Row>[] => {
      const now = this.find(before.id);
      if (now === undefined) return [];
      const { rev, past, changedBy, changedAt, clash } = now;
      return [{ before: now, after: { ...before, rev, past, changedBy, changedAt, ...(clash === undefined ? {} : { clash }) } }];
    });
    if (back.length > 0) await this.write(back);
    this.heard();
  }
  private async takeOut(ids: readonly string[]): Promise<void> {
    for (const id of ids) this.typing.delete(id);
    const [first, ...others] = ids;
    if (first === undefined) return;
    this.drop(ids);
    this.heard();
    await this.session.store.remove(
      rowKind,
      first,
      others.map((id) => ({ store: 'rows', id })),
    );
  }
  /** Takes a line out, as it stands now. */
  async remove(row: Row, says: string): Promise<void> {
    const took: Done = {
      id: row.id,
      says,
      made: [],
      takeBack: async () => {
        this.taken = this.taken.filter((each) => each !== took);
        await this.write([{ before: null, after: row }]);
      },
    };
    this.done = undefined;
    this.taken = [took, ...this.taken];
    await this.takeOut([row.id]);
  }
}

/** The record of a place, once it is read. */
export function useRows(session: Session, { id }: Pick<Place, 'id'>): Rows | undefined {
  const [rows, setRows] = useState<Rows | undefined>(undefined);
  const [, redraw] = useState(0);
  useEffect(() => {
    const opened = new Rows(session, id, () => redraw((count) => count + 1));
    void opened.read().then(() => setRows(opened));
    return () => opened.close();
  }, [session, id]);
  return rows;
}
