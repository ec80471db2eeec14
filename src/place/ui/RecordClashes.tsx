import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Clash } from '../model/parts.ts';
import { type Data, dataAt, isFields, isList, listed } from './edit.ts';
import type { PlaceField } from './fields/field.ts';
import type { Change } from './session.ts';
import { valueWords } from './told.ts';

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
  stock: 'The stock',
};
const isText = (value: Data): value is string | number | boolean =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean';
const words = (value: Data): string => {
  if (isText(value)) return String(value);
  if (isList(value)) return `${value.length} of them`;
  return isFields(value) ? Object.values(value).filter(isText).join(', ') : 'nothing';
};

export interface ClashesProps {
  readonly record: { readonly clash?: readonly Clash[] | undefined };
  readonly onChange: (changes: readonly Change[]) => void;
  /** What the record is asked by: they name what was changed, and say it as they show it. */
  readonly fields?: readonly PlaceField[];
  readonly system?: UnitSystem;
}
/** One field changed in two windows: both are shown, and somebody picks. */
export function RecordClashes({ record, onChange, fields = [], system = 'us' }: ClashesProps) {
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
        const field = fields.find(({ at }) => at === path.filter((step) => step !== 'typed').join('.'));
        const say = (value: Data): string => (field === undefined || path[0] === 'typed' ? words(value) : valueWords(field, value, system));
        return (
          <div class="place-bar" role="alert" key={clash.path + clash.otherAt}>
            <p>
              <b>{field?.cell.label ?? labels[path[0] ?? ''] ?? 'A field'} was changed in two windows.</b> It says: {say(dataAt(record, path))}.{' '}
              {clash.otherBy} has: {say(other)}.
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
