import type { UnitSystem } from '../../../calculators/units/units.ts';
import { type Clash, longestWords } from '../model/parts.ts';
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
/** Words in which two people may each have told something true, by the last step to them, with what stands between the two. */
const betweenBoth: Readonly<Record<string, string>> = { seen: '\n', said: '\n', text: '\n', spots: '; ', what: '; ', word: '; ' };
/** Both words, one after the other; nothing where one of them is no words, or both are too long together. */
function bothOf(path: readonly string[], here: Data, other: Data): string | undefined {
  const between = betweenBoth[path.at(-1) ?? ''];
  if (between === undefined || path.includes('typed') || typeof here !== 'string' || typeof other !== 'string') return undefined;
  const both = `${here}${between}${other}`;
  return both.length > longestWords ? undefined : both;
}
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
/** One field changed in two windows, or on two devices: both are shown, and somebody picks; of words both can stay. */
export function RecordClashes({ record, onChange, fields = [], system = 'us' }: ClashesProps) {
  const clashes = record.clash ?? [];
  /** Nothing new where what it says is kept. */
  const pick = (clash: Clash, taken?: { readonly to: Data }): void => {
    const left = clashes.filter((each) => each !== clash);
    onChange([
      ...(taken === undefined ? [] : [{ path: clash.path.split('/'), to: taken.to }]),
      { path: ['clash'], to: left.length === 0 ? undefined : listed(left) },
    ]);
  };
  return (
    <>
      {clashes.map((clash) => {
        const path = clash.path.split('/');
        const other: Data = clash.other === null ? undefined : JSON.parse(clash.other);
        const field = fields.find(({ at }) => at === path.filter((step) => step !== 'typed').join('.'));
        const both = bothOf(path, dataAt(record, path), other);
        const say = (value: Data): string => (field === undefined || path[0] === 'typed' ? words(value) : valueWords(field, value, system));
        return (
          <div class="place-bar" role="alert" key={clash.path + clash.otherAt}>
            <p>
              <b>{field?.cell.label ?? labels[path[0] ?? ''] ?? 'A field'} was changed in two windows, or on two devices.</b> It says:{' '}
              {say(dataAt(record, path))}. {clash.otherBy} has: {say(other)}.
            </p>
            <button type="button" onClick={() => pick(clash)}>
              Keep what it says
            </button>{' '}
            <button type="button" onClick={() => pick(clash, { to: other })}>
              Take the other
            </button>
            {both !== undefined && (
              <>
                {' '}
                <button type="button" onClick={() => pick(clash, { to: both })}>
                  Keep both
                </button>
              </>
            )}
          </div>
        );
      })}
    </>
  );
}
