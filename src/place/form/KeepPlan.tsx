import { useState } from 'preact/hooks';
import type { Place } from '../model/place.ts';
import { rowVersion } from '../model/row.ts';
import { planFrom, workedMoves } from '../record/planFrom.ts';
import { rowKind } from '../store/rowKind.ts';
import { stateWords } from '../store/storageState.ts';
import type { Store } from '../store/store.ts';
import { begin } from './openHere.ts';

interface KeepPlanProps {
  readonly store: Store;
  readonly place: Place;
  readonly pastureIds: readonly string[];
  readonly results: Readonly<Record<string, unknown>>;
  /** The view of the record. */
  readonly record: string;
}
/** Moves that a form worked out, kept as the plan that the record is then held against. */
export function KeepPlan({ store, place, pastureIds, results, record }: KeepPlanProps) {
  const [told, setTold] = useState('');
  const moves = workedMoves(results);
  if (moves.length === 0) return null;
  const plan = planFrom(place, pastureIds, moves);
  if ('has' in plan)
    return (
      <p class="keep-how">
        To keep these moves as your plan, {place.name} must have the paddocks by name: they take {plan.needs}, and it has {plan.has}.
      </p>
    );
  const write = async (): Promise<void> => {
    const { records } = await store.read(rowKind);
    // The same move is planned once, however often it is kept.
    const isThere = (body: (typeof plan)[number]): boolean =>
      records.some(
        (row) =>
          row.is === 'plan' &&
          body.is === 'plan' &&
          row.placeId === place.id &&
          row.paddockId === body.paddockId &&
          row.herdNumber === body.herdNumber &&
          row.inDay === body.inDay,
      );
    const rows = plan.filter((body) => !isThere(body)).map((body) => ({ ...body, ...begin(), v: rowVersion, placeId: place.id }));
    if (rows.length > 0) {
      await store.save(
        rowKind,
        rows.map((after) => ({ before: null, after })),
      );
    }
    setTold(stateWords(store.state()) ?? `${rows.length === 1 ? 'One move is' : `${rows.length} moves are`} in the plan of ${place.name}.`);
  };
  return (
    <p class="keep-how">
      {told === '' ? (
        <button type="button" onClick={() => void write()}>
          Keep these {plan.length} moves as the plan
        </button>
      ) : (
        <span role="status">
          {told} <a href={record}>The record</a>
        </span>
      )}
    </p>
  );
}
