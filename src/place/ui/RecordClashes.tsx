import type { Clash } from '../model/parts.ts';
import { type Data, dataAt, isFields, isList, listed } from './edit.ts';
import type { Change } from './session.ts';

const labels: Readonly<Record<string, string>> = {
  seen: 'What we saw',
  said: 'What you said',
  steps: 'What we agreed',
  by: 'Written by',
  present: 'Who was there',
  day: 'The day',
  nextDay: 'The next look',
  pastureIds: 'The pastures',
  ground: 'The ground that day',
  blocks: 'Words of the note',
  order: 'The order of the note',
};
const isText = (value: Data): value is string | number | boolean =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean';
const words = (value: Data): string => {
  if (isText(value)) return String(value);
  if (isList(value)) return `${value.length} of them`;
  return isFields(value) ? Object.values(value).filter(isText).join(', ') : 'nothing';
};

interface ClashesProps {
  readonly record: { readonly clash?: readonly Clash[] | undefined };
  readonly onChange: (changes: readonly Change[]) => void;
}
/** One field changed in two windows: both are shown, and somebody picks. */
export function RecordClashes({ record, onChange }: ClashesProps) {
  const clashes = record.clash ?? [];
  const pick = (clash: Clash, isOther: boolean): void => {
    const left = clashes.filter((each) => each !== clash);
    const other: Data = clash.other === null ? undefined : JSON.parse(clash.other);
    onChange([
      ...(isOther ? [{ path: clash.path.split('/'), to: other }] : []),
      { path: ['clash'], to: left.length === 0 ? undefined : listed(left) },
    ]);
  };
  return (
    <>
      {clashes.map((clash) => {
        const path = clash.path.split('/');
        const other: Data = clash.other === null ? undefined : JSON.parse(clash.other);
        return (
          <div class="place-bar" role="alert" key={clash.path + clash.otherAt}>
            <p>
              <b>{labels[path[0] ?? ''] ?? 'A field'} was changed in two windows.</b> It says: {words(dataAt(record, path))}. {clash.otherBy} has:{' '}
              {words(other)}.
            </p>
            <button type="button" onClick={() => pick(clash, false)}>
              Keep what it says
            </button>{' '}
            <button type="button" onClick={() => pick(clash, true)}>
              Take the other
            </button>
          </div>
        );
      })}
    </>
  );
}
