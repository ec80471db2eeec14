import { useState } from 'preact/hooks';
import * as v from 'valibot';
import { isReachable } from '../../site/reachable.ts';
import { type Note, noteSchema } from '../model/note.ts';
import { photoAddress } from '../model/photo.ts';
import { type Visit, visitSchema } from '../model/visit.ts';
import { noteKind, photoKind, resultKind, visitKind } from '../store/visitKinds.ts';
import { type Audience, isForOffice, isOfficesChoice, isResultFor, outgoing, usualPlaceCode } from '../visit/audience.ts';
import { type Block, blocksOf, type Facts } from '../visit/blocks.ts';
import { newNote } from '../visit/newVisit.ts';
import { say } from './aloud.tsx';
import { changed, type Data, listed } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import { text } from './fields/field.ts';
import { useKept, useRecord } from './keptRecords.ts';
import { NextLook } from './NextLook.tsx';
import { NoteOut } from './NoteOut.tsx';
import { NotePaper, RunsView } from './NotePaper.tsx';
import { RecordClashes } from './RecordClashes.tsx';
import { Steps } from './Steps.tsx';
import type { Change } from './session.ts';
import { Troubled } from './Troubled.tsx';
import { today } from './today.ts';
import { usePutIn } from './usePutIn.ts';
import type { PlaceView } from './view.ts';
import { partsIn } from './views.ts';
import { Words } from './Words.tsx';

const isNote = (value: unknown): value is Note => v.is(noteSchema, value);
const isVisit = (value: unknown): value is Visit => v.is(visitSchema, value);

/** Where this copy of the pages lies, as others can reach it; in a folder on a disk, or on a device or network of one’s own, nobody can. */
export const copyAddress = (): string | undefined => (isReachable(location) ? new URL('../', location.href.replace(/[?#].*/, '')).href : undefined);
const withStroke = (address: string): string => (address.endsWith('/') ? address : `${address}/`);

interface EditProps {
  readonly view: PlaceView;
  readonly facts: Facts;
  readonly block: Block;
  readonly audience: Audience | undefined;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly onBlock: (changes: Readonly<Record<string, Data>>) => void;
  readonly onVisit: (changes: readonly Change[]) => void;
  readonly onMove: (by: -1 | 1) => void;
}
function EditBlock({ view, facts, block, audience, isFirst, isLast, onBlock, onVisit, onMove }: EditProps) {
  const { id, kind, title, text: words, cameWith, onlyInVisit, lines, isList, isFixed, isLeftOut } = block;
  const { visit } = facts;
  const move = (by: -1 | 1, label: string, isOff: boolean) => (
    // Disabled it would lose the focus to the other, and the next press would undo what this one did.
    <button type="button" class="quiet" aria-disabled={isOff || undefined} onClick={() => isOff || onMove(by)}>
      {label} <span class="unseen">{title}</span>
    </button>
  );
  return (
    <section class={`note-block${isLeftOut ? ' is-out' : ''}`}>
      <h3>{title}</h3>
      {!isLeftOut && (
        <>
          {words !== undefined && (
            <Words
              id={`note-${id}`}
              of={title}
              label={kind === 'result' ? 'In words' : 'Words of the note'}
              text={words}
              onText={(to) => onBlock({ text: to === (cameWith ?? words) ? undefined : to })}
            />
          )}
          {onlyInVisit !== undefined && <p class="problem">Only in the visit, not in this note: {onlyInVisit.join(' / ')}</p>}
          {cameWith !== undefined && (
            <p>
              <button type="button" class="quiet" onClick={() => onBlock({ text: undefined })}>
                Put the words back <span class="unseen">{title}</span>
              </button>
            </p>
          )}
          {kind === 'agreed' && <Steps view={view} steps={visit.steps} day={visit.day} onChange={onVisit} />}
          {kind === 'next' && <NextLook id="note" record={visit} system={view.system} onChange={onVisit} />}
          {kind !== 'agreed' && kind !== 'next' && lines.length > 0 && <RunsView lines={lines} isList={isList} />}
        </>
      )}
      {audience === 'office' && isOfficesChoice(block) && (
        <label class="place-tick">
          <input type="checkbox" checked={isForOffice(block, facts)} onChange={(event) => onBlock({ isForOffice: event.currentTarget.checked })} />
          <span>
            In the office’s copy <span class="unseen">{title}</span>
          </span>
        </label>
      )}
      <p class="note-moves">
        {move(-1, 'Up', isFirst)} {move(1, 'Down', isLast)}{' '}
        {!isFixed && (
          <button type="button" class="quiet" onClick={() => onBlock({ isLeftOut: isLeftOut ? undefined : true })}>
            {isLeftOut ? 'Put it in' : 'Leave it out'} <span class="unseen">{title}</span>
          </button>
        )}
      </p>
    </section>
  );
}

const codeFields = [text('placeCode', 'What the office calls this place', { help: 'A code of your choice: no name of a person or a place.' })];
const baseFields = [
  text('linkBase', 'Address of the copy of these pages that people reach', {
    help: 'It begins with https:// and stands before each link of a note. Without it a note says how to open a calculation by hand.',
    shape: { is: /^https?:\/\/\S+$/, problem: 'No link can begin with this: it must be a whole address, with https:// before it.' },
  }),
];

/** `#/note/ID`: the follow-up note of a visit. */
export function NotePage(view: PlaceView) {
  const { session, place, system, isPrinting, edition, office } = view;
  const [id = ''] = partsIn(location.hash);
  const visitWork = useRecord(session, visitKind, id);
  const noteWork = useRecord(session, noteKind, id, () => newNote(session.newHead(), { id, placeId: place.id }, today(view)));
  const resultIds = visitWork.is === 'there' ? visitWork.value.results.map((each) => each.id) : [];
  const results = useKept(session, resultKind, () => true, resultIds);
  const photoIds = visitWork.is === 'there' ? (visitWork.value.photos ?? []).map((each) => each.id) : [];
  const photos = useKept(session, photoKind, () => true, photoIds) ?? [];
  const [audience, setAudience] = useState<Audience | undefined>(undefined);
  const base = office?.copyAt ?? (place.linkBase === undefined ? copyAddress() : withStroke(place.linkBase));
  const putIn = usePutIn(base === undefined ? results : undefined, system);
  if (visitWork.is === 'coming' || noteWork.is !== 'there' || results === undefined) return null;
  if (visitWork.is === 'none' || visitWork.value.placeId !== place.id)
    return (
      <p>
        The visit of this note is not kept here, or belongs to another place. <a href="#/visits">All visits of {place.name}</a>.
      </p>
    );
  const [visit, note] = [visitWork.value, noteWork.value];
  const inVisit = visit.results.flatMap((each) => results.find((result) => result.id === each.id) ?? []);
  const facts: Facts = {
    place,
    visit,
    results: inVisit,
    note,
    system,
    base,
    ...(putIn === undefined ? {} : { putIn }),
    edition,
    office,
    photos: new Map(photos.map((each) => [each.id, photoAddress(each)])),
  };
  const blocks = blocksOf(facts, isResultFor(facts, audience));
  const onNote = (changes: readonly Change[]): void =>
    noteWork.set(changed(isNote, noteWork.now(), [...changes, { path: ['editedDay'], to: today(view) }]));
  const onVisit = (changes: readonly Change[]): void => visitWork.set(changed(isVisit, visitWork.now(), changes));
  const onBlock = (blockId: string, changes: Readonly<Record<string, Data>>): void => {
    const isThere = note.blocks.some((each) => each.id === blockId);
    onNote([
      ...(isThere ? [] : [{ path: ['blocks'], to: [...listed(note.blocks), { id: blockId }] }]),
      ...Object.entries(changes).map(([key, to]) => ({ path: ['blocks', blockId, key], to })),
    ]);
  };
  const onMove = (index: number, by: -1 | 1): void => {
    const moved = blocks[index];
    if (moved === undefined) return;
    const ids = blocks.map((each) => each.id);
    onNote([{ path: ['order'], to: ids.toSpliced(index, 1).toSpliced(index + by, 0, moved.id) }]);
    say(`${moved.title}: now ${index + by + 1} of ${ids.length}.`);
  };
  if (isPrinting)
    return (
      <div class="note-page">
        {audience === undefined ? (
          <p>Choose first whom this note is for: the producer or the office. Then print it again.</p>
        ) : (
          <NotePaper note={outgoing(facts, audience)} />
        )}
      </div>
    );
  return (
    <div class="note-page">
      <Troubled trouble={noteWork.trouble ?? visitWork.trouble} what="This note" />
      {visit.clash !== undefined && <p class="problem">Its visit still says two things. Pick before this note goes out:</p>}
      <RecordClashes record={visit} onChange={onVisit} />
      <RecordClashes record={note} onChange={onNote} />
      <p>
        <a href={`#/visit/${visit.id}`}>Back to the visit</a>
      </p>
      <NoteOut view={view} facts={facts} audience={audience} onAudience={setAudience} />
      {office?.copyAt === undefined && copyAddress() === undefined && (
        <>
          {location.protocol !== 'file:' && (
            <p class="none-yet">This copy is at {location.host}, which opens on this device or its own network alone: no link to it would open.</p>
          )}
          <FieldsView id="note-base" record={place} fields={baseFields} system={system} path={[]} onChange={(changes) => session.change(changes)} />
        </>
      )}
      {audience === 'office' && (
        <>
          <FieldsView
            id="note"
            record={note}
            fields={codeFields}
            system={system}
            path={[]}
            onChange={(changes) => onNote(changes.filter(({ path }) => path[0] !== 'typed'))}
          />
          <label class="place-tick">
            <input
              type="checkbox"
              checked={note.hasPastureNames === true}
              onChange={(event) => onNote([{ path: ['hasPastureNames'], to: event.currentTarget.checked || undefined }])}
            />
            <span>Call pastures by their names, not “pasture 1”</span>
          </label>
          {note.placeCode === undefined && <p class="none-yet">Until you choose a code it says “{usualPlaceCode}”.</p>}
        </>
      )}
      {blocks.map((block, index) => (
        <EditBlock
          key={block.id}
          view={view}
          facts={facts}
          block={block}
          audience={audience}
          isFirst={index === 0}
          isLast={index === blocks.length - 1}
          onBlock={(changes) => onBlock(block.id, changes)}
          onVisit={onVisit}
          onMove={(by) => onMove(index, by)}
        />
      ))}
    </div>
  );
}
