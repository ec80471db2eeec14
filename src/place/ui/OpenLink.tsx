import { useEffect, useState } from 'preact/hooks';
import type { Calculator } from '../../../calculators/kit/define.ts';
import { noteOf } from '../../../calculators/kit/note.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { forget, keep, visitKey } from '../../scripts/kept.ts';
import { loadAgain } from '../../site/folder.ts';
import type { Visit } from '../model/visit.ts';
import { visitKind } from '../store/visitKinds.ts';
import { newVisit } from '../visit/newVisit.ts';
import { type PastedLink, pastedLinks } from '../visit/pastedLinks.ts';
import { visitTold } from '../visit/visitWords.ts';
import { definitionIn } from './definitions.ts';
import { formAddress } from './formAddress.ts';
import { useKept } from './keptRecords.ts';
import { today } from './today.ts';
import type { PlaceView, View } from './view.ts';
import { partsIn } from './views.ts';

/** A link as this copy of the pages reads it. */
type Read =
  | { readonly is: 'there'; readonly title: string; readonly notices: readonly string[]; readonly says: string }
  | { readonly is: 'unknown' }
  | { readonly is: 'failed' };

async function readLink(calculator: Calculator, link: string, system: UnitSystem): Promise<Read> {
  await calculator.fetchEngine?.();
  const { form, notices } = fromLink(calculator, link);
  const ran = runTexts(calculator, form.this, system);
  const says = 'outcome' in ran ? noteOf(calculator, ran.outcome) : `It gives no result yet: ${ran.refusals[0]?.say ?? 'something is missing.'}`;
  return { is: 'there', title: calculator.title, notices, says };
}
function useRead({ slug, link }: PastedLink, system: UnitSystem): Read | undefined {
  const [read, setRead] = useState<Read | undefined>(undefined);
  useEffect(() => {
    setRead(undefined);
    const load = definitionIn(slug);
    if (load === undefined) setRead({ is: 'unknown' });
    else
      load
        .then((calculator) => readLink(calculator, link, system))
        .then(
          (read) => setRead(read),
          () => setRead({ is: 'failed' }),
        );
  }, [slug, link, system]);
  return read;
}

interface FoundProps {
  readonly pasted: PastedLink;
  readonly system: UnitSystem;
  /** The visit in words; none where no place is open. */
  readonly visitWords: string | undefined;
  readonly onOpen: (pasted: PastedLink, isForVisit: boolean) => void;
}
function Found({ pasted, system, visitWords, onOpen }: FoundProps) {
  const read = useRead(pasted, system);
  if (read === undefined) return <li>One moment.</li>;
  if (read.is === 'unknown')
    return (
      <li>
        <p role="alert">
          This copy of the pages has no calculator called “{pasted.slug}”. A newer copy may have it: ask whoever sent the link where theirs is.
        </p>
      </li>
    );
  if (read.is === 'failed')
    return (
      <li>
        <p role="alert">The calculator of this link could not be loaded. {loadAgain()}</p>
      </li>
    );
  return (
    <li>
      <h3>{read.title}</h3>
      {read.notices.map((notice) => (
        <p key={notice} class="problem">
          {notice}
        </p>
      ))}
      <p class="pasted-says">{read.says}</p>
      <p class="note-buttons">
        <button type="button" onClick={() => onOpen(pasted, false)}>
          Open it <span class="unseen">{read.title}</span>
        </button>{' '}
        {visitWords !== undefined && (
          <button type="button" onClick={() => onOpen(pasted, true)}>
            Open it to keep it in {visitWords} <span class="unseen">{read.title}</span>
          </button>
        )}
      </p>
    </li>
  );
}

const isNew = 'new';
/** Into which visit; a link that came from a visit goes back into that one. */
function VisitChoice({
  view,
  visits,
  into,
  onInto,
}: {
  readonly view: PlaceView;
  readonly visits: readonly Visit[];
  readonly into: string;
  readonly onInto: (id: string) => void;
}) {
  if (visits.length === 0) return null;
  return (
    <p class="keep-name">
      <label for="pasted-visit">In which visit it would be kept</label>
      <select id="pasted-visit" autocomplete="off" onChange={(event) => onInto(event.currentTarget.value)}>
        {visits.map((each) => (
          <option key={each.id} value={each.id} selected={each.id === into}>
            the visit of {visitTold(view.place, each, visits)}
          </option>
        ))}
        <option value={isNew} selected={into === isNew}>
          a new visit, today
        </option>
      </select>
    </p>
  );
}

function Asking({ view, place }: { readonly view: View; readonly place: PlaceView | undefined }) {
  const { session, system } = view;
  const [asked] = partsIn(location.hash);
  const visits = useKept(session, visitKind, ({ placeId }) => placeId === place?.place.id);
  const latest = (visits ?? []).toSorted((one, other) => other.day.localeCompare(one.day) || other.changedAt.localeCompare(one.changedAt));
  const [picked, setPicked] = useState<string | undefined>(undefined);
  const into = picked ?? latest.find(({ id }) => id === asked)?.id ?? latest[0]?.id ?? isNew;
  const [text, setText] = useState('');
  const pasted = text === '' ? undefined : pastedLinks(text);
  const visit = latest.find(({ id }) => id === into);
  const visitWords = place && (visit ? `the visit of ${visitTold(place.place, visit, latest)}` : 'a new visit');
  const open = async ({ slug, link }: PastedLink, isForVisit: boolean): Promise<void> => {
    if (!isForVisit) forget('sessionStorage', visitKey);
    else if (place !== undefined) {
      const begun = visit ?? newVisit(session.newHead(), place.place.id, today(view), latest[0]?.by);
      if (visit === undefined) await session.store.save(visitKind, [{ before: null, after: begun }]);
      keep('sessionStorage', visitKey, begun.id);
    }
    await session.flush();
    location.assign(formAddress(slug, link));
  };
  return (
    <>
      <p>
        Somebody sent you a calculation? Paste the link here, or the whole message that it came in. It opens in this copy of the pages, with its own
        figures, also without signal.
      </p>
      <div class="field words-field">
        <p class="field-name">
          <label for="pasted">Link, or message with links</label>
        </p>
        <div class="control">
          <textarea
            id="pasted"
            rows={4}
            value={text}
            aria-invalid={pasted?.is === 'none' || undefined}
            aria-describedby="pasted-problem"
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </div>
        <p class="problem" id="pasted-problem" role="status">
          {pasted?.is === 'none' && pasted.say}
        </p>
      </div>
      {pasted?.is === 'found' && (
        <>
          {place && <VisitChoice view={place} visits={latest} into={into} onInto={setPicked} />}
          <ul class="coming">
            {pasted.links.map((each) => (
              <Found
                key={`${each.slug}?${each.link}`}
                pasted={each}
                system={system}
                visitWords={visitWords}
                onOpen={(link, isForVisit) => void open(link, isForVisit)}
              />
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** `#/link`, `#/link/VISIT`: a calculation that came in a message, opened here and, if somebody likes, kept in a visit. */
export function OpenLink(view: View) {
  const { place } = view.session;
  // The demo place's visits are invented, and nobody's own result belongs in one.
  return <Asking view={view} place={place === undefined || place.isDemo === true ? undefined : { ...view, place }} />;
}
