import { useState } from 'preact/hooks';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { joinedOf, oursOf, type Picked } from '../files/merge.ts';
import type { Pictures } from '../files/pictures.ts';
import { type Coming, previewOf } from '../files/preview.ts';
import type { FileRead } from '../files/read.ts';
import { sameNames } from '../files/sameNames.ts';
import { textOfRaw } from '../files/textOfRaw.ts';
import type { Belongings } from '../model/belongings.ts';
import type { Place } from '../model/place.ts';
import { download } from './download.ts';
import { holds } from './holds.ts';
import type { View } from './view.ts';

export interface PreviewProps {
  readonly view: View;
  readonly read: Extract<FileRead, { is: 'read' }>;
  readonly pictures: Pictures | undefined;
  readonly keptHere: Partial<Belongings>;
  readonly onDone: () => void;
}
const toldHolds = (place: Place, system: UnitSystem): string => Object.values(holds(place, system)).filter(Boolean).join('; ');
interface JoinedProps {
  readonly picked: Picked;
  readonly system: UnitSystem;
  readonly onApart: (isApart: boolean) => void;
}
/** Of a place that is joined with ours: which of its parts become one, and what it then holds. */
function Joined({ picked, system, onApart }: JoinedProps) {
  const [ours, joined] = [oursOf(picked), joinedOf(picked)];
  if (ours === undefined || joined === undefined) return null;
  const { names } = sameNames(ours, picked.coming.place);
  return (
    <>
      {names.length > 0 && (
        <label class="place-tick">
          <input type="checkbox" checked={picked.isApart !== true} onChange={(event) => onApart(!event.currentTarget.checked)} />
          <span>What has one name is one thing, not two: {names.join(', ')}</span>
        </label>
      )}
      <p role="status">Joined it holds: {toldHolds(joined, system)}.</p>
    </>
  );
}
type Choice = 'leave' | 'bring' | 'namesake';

/** What a file would bring, place by place. Only its button writes. */
export function Preview({ view, read, pictures, keptHere, onDone }: PreviewProps) {
  const { session, system } = view;
  const [coming] = useState(() => previewOf(read, { places: session.places, ...keptHere }));
  const [choices, setChoices] = useState<readonly Choice[]>(() => coming.map(({ isPicked }) => (isPicked ? 'bring' : 'leave')));
  const [apart, setApart] = useState<readonly number[]>([]);
  const [said, setSaid] = useState('');
  const choose = (index: number, choice: Choice): void => setChoices(choices.map((each, at) => (at === index ? choice : each)));
  const pickedAt = (each: Coming, index: number): readonly Picked[] => {
    const choice = choices[index];
    return choice === undefined || choice === 'leave' ? [] : [{ coming: each, isNamesake: choice === 'namesake', isApart: apart.includes(index) }];
  };
  const picked = coming.flatMap(pickedAt);
  const bring = async (): Promise<void> => {
    const from = location.hash;
    const saved = await session.bring(picked, pictures);
    const held = saved.some((each) => each.is === 'held');
    if (held) setSaid('This device had no room for all of it. It is in this window; save the file before you close it.');
    else onDone();
    // Whoever has gone on meanwhile stays there.
    if (!held && location.hash === from) location.hash = '#/';
  };
  return (
    <div class="preview">
      <h4>What is in the file</h4>
      {coming.length === 0 && read.aside.length === 0 && <p>There is no place in this file.</p>}
      <ul class="coming">
        {coming.map((each, index) => {
          const { place, says, rowsSay, visitsSay, namesake } = each;
          return (
            <li key={place.id}>
              <p>
                <b>{place.name}</b>
                {place.isDemo === true && ' (invented, a demo place)'}
              </p>
              <p>{toldHolds(place, system) || 'Nothing but its name.'}</p>
              <p>{says}</p>
              {rowsSay !== undefined && <p>{rowsSay}</p>}
              {visitsSay !== undefined && <p>{visitsSay}</p>}
              {namesake === undefined ? (
                <label class="place-tick">
                  <input
                    type="checkbox"
                    checked={choices[index] === 'bring'}
                    onChange={(event) => choose(index, event.currentTarget.checked ? 'bring' : 'leave')}
                  />
                  <span>
                    Bring it in<span class="unseen">: {place.name}</span>
                  </span>
                </label>
              ) : (
                <fieldset class="answers">
                  <legend class="unseen">{place.name} in the file</legend>
                  {(
                    [
                      ['leave', 'Leave it in the file'],
                      ['bring', 'It is another place: keep both'],
                      ['namesake', 'It is the same: join them, and show me what differs'],
                    ] as const
                  ).map(([key, label]) => (
                    <label key={key} class="place-tick">
                      <input type="radio" name={`coming-${place.id}`} checked={choices[index] === key} onChange={() => choose(index, key)} />
                      <span>{label}</span>
                    </label>
                  ))}
                </fieldset>
              )}
              {pickedAt(each, index).map((one) => (
                <Joined
                  key={place.id}
                  picked={one}
                  system={system}
                  onApart={(isApart) => setApart(isApart ? [...apart, index] : apart.filter((at) => at !== index))}
                />
              ))}
            </li>
          );
        })}
        {read.aside.map(({ name, why, raw }) => (
          <li key={name + why}>
            <p>
              <b>{name}</b>: stays in the file. {why}
            </p>
            <button type="button" onClick={() => download('holdwater-aside.json', textOfRaw(raw))}>
              Save it as a file of its own
            </button>
          </li>
        ))}
      </ul>
      <p>
        <button type="button" disabled={picked.length === 0} onClick={() => void bring()}>
          {picked.length === 1 ? 'Bring in one place' : `Bring in ${picked.length} places`}
        </button>{' '}
        <button type="button" class="quiet" onClick={onDone}>
          Leave it
        </button>
      </p>
      <p role="status">{said}</p>
    </div>
  );
}
