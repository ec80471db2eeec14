import type { Clash } from '../model/parts.ts';
import type { Place } from '../model/place.ts';
import { type Data, dataAt, isFields, isList, withItem } from './edit.ts';
import { boughtFields, priceFields, stackFields } from './fields/feed.ts';
import { type PlaceField, text } from './fields/field.ts';
import { layerFields, paddockFields, pastureFirst, pastureGroups, soilFields } from './fields/ground.ts';
import { seasonGroups } from './fields/season.ts';
import { stockFields } from './fields/stock.ts';
import { toolGroups } from './fields/tools.ts';
import { waterGroups } from './fields/water.ts';
import type { Change } from './session.ts';
import { valueWords } from './told.ts';
import type { PlaceView } from './view.ts';

const all = (groups: readonly { readonly fields: readonly PlaceField[] }[]): readonly PlaceField[] => groups.flatMap(({ fields }) => fields);
const lists: Readonly<Record<string, readonly PlaceField[]>> = {
  pastures: [...pastureFirst, ...all(pastureGroups)],
  paddocks: paddockFields,
  soils: soilFields,
  layers: layerFields,
  herd: stockFields,
  stacks: stackFields,
  water: all(waterGroups),
};
const root: readonly PlaceField[] = [text('name', 'Name of the place'), ...boughtFields, ...priceFields, ...all(seasonGroups), ...all(toolGroups)];

/** What stands at a path, in the words of its form. */
function fieldAt(place: Place, steps: readonly string[]): { readonly label: string; readonly field: PlaceField | undefined } {
  const names: string[] = [];
  let fields = root;
  let from = 0;
  for (const [index, step] of steps.entries()) {
    const list = lists[step];
    const item = index + 1 < steps.length ? dataAt(place, steps.slice(0, index + 2)) : undefined;
    if (list === undefined || index + 1 >= steps.length) continue;
    fields = list;
    from = index + 2;
    const name = isFields(item) ? (item['name'] ?? item['kind']) : undefined;
    if (typeof name === 'string') names.push(name);
  }
  const at = steps
    .slice(from)
    .filter((step) => step !== 'typed')
    .join('.');
  const field = fields.find((each) => each.at === at);
  return { label: [...names, field?.cell.label ?? (at === '' ? 'all of it' : at)].join(', '), field };
}
const parsed = ({ other }: Clash): Data => (other === null ? undefined : JSON.parse(other));
const when = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });
/** The text of a number goes with the number: it is not asked about apart. */
const goesWith = (clash: Clash, clashes: readonly Clash[]): boolean =>
  /(?:^|\/)typed\//.test(clash.path) &&
  clashes.some((each) => each !== clash && each.path === clash.path.replace(/(^|\/)typed\//, '$1').replaceAll('.', '/'));

/** What a pick changes: the field, where the other was picked, and the list of what is still open. */
function changesOf(place: Place, clash: Clash, isOther: boolean): readonly Change[] {
  const left = place.clash?.filter((each) => each !== clash).map((each) => ({ ...each }));
  const path = clash.path.split('/');
  const at = path.at(-1);
  const list = dataAt(place, path.slice(0, -1));
  // A whole thing of a list, where one window changed it and the other took it away.
  const to: Change =
    isList(list) && at !== undefined ? { path: path.slice(0, -1), to: withItem(list, at, parsed(clash)) } : { path, to: parsed(clash) };
  return [...(isOther ? [to] : []), { path: ['clash'], to: left?.length === 0 ? undefined : left }];
}

/** Two windows, or two devices, changed the same field: both are shown, and the person picks. */
export function Clashes({ session, system, place, clashes }: PlaceView & { readonly clashes: readonly Clash[] }) {
  return (
    <div class="place-bar" role="alert">
      <p>
        <b>Changed in two windows, or on two devices.</b> Pick what is right; until then both are kept.
      </p>
      <ul class="clashes">
        {clashes
          .filter((each) => !goesWith(each, clashes))
          .map((clash) => {
            const steps = clash.path.split('/');
            const { label, field } = fieldAt(place, steps);
            const told = (value: Data): string => {
              if (field !== undefined) return valueWords(field, value, system);
              if (value === undefined) return 'taken away';
              return isFields(value) ? 'as it was changed' : String(value);
            };
            return (
              <li key={clash.path + clash.otherAt}>
                <p>
                  <b>{label}</b>
                </p>
                <p class="two-sides">
                  <button type="button" onClick={() => session.change(changesOf(place, clash, false))}>
                    {told(dataAt(place, steps))}
                    <span class="side-words"> stands now</span>
                  </button>
                  <button type="button" onClick={() => session.change(changesOf(place, clash, true))}>
                    {told(parsed(clash))}
                    <span class="side-words">
                      {' '}
                      {clash.otherBy}, {when.format(new Date(clash.otherAt))}
                    </span>
                  </button>
                </p>
              </li>
            );
          })}
      </ul>
    </div>
  );
}
