import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Calculator } from '../../../calculators/kit/define.ts';
import { toLink } from '../../../calculators/kit/link.ts';
import { exampleOn } from '../../../calculators/kit/occurs.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { startTexts, type Texts } from '../../../calculators/kit/state.ts';
import { textAt } from '../../../calculators/kit/textAt.ts';
import { localDay } from '../../../calculators/units/days.ts';
import { loadAgain } from '../../site/folder.ts';
import { KeepPanel } from '../form/KeepPanel.tsx';
import { blankPlace } from '../form/openHere.ts';
import { newId } from '../store/ids.ts';
import { definitionIn } from './definitions.ts';
import type { View } from './view.ts';

/** The example as a link would open it, to tell what somebody has put in from what has only stood there. */
function exampleTexts(calculator: Calculator, todayDay: number): Texts {
  const { texts } = exampleOn(calculator, startTexts(calculator.inputs), todayDay);
  return fromLink(calculator, toLink(calculator, { this: texts, that: null })).form.this;
}
/** What differs from the example; of a row that differs, all of it. */
export function ownIn(calculator: Calculator, texts: Texts, todayDay: number): (path: string) => boolean {
  const example = exampleTexts(calculator, todayDay);
  return (path) => {
    const [key = '', index, column] = path.split('.');
    if (index === undefined || column === undefined) return textAt(texts, path) !== textAt(example, path);
    const rowOf = (of: Texts): unknown => {
      const rows = of[key];
      return typeof rows === 'object' ? rows[Number(index)] : undefined;
    };
    return JSON.stringify(rowOf(texts)) !== JSON.stringify(rowOf(example));
  };
}

type Brought =
  | { readonly is: 'coming' }
  | { readonly is: 'there'; readonly calculator: Calculator }
  | { readonly is: 'unknown' }
  | { readonly is: 'failed' };

interface KeepProps extends View {
  readonly asked: { readonly slug: string; readonly link: string };
}
/** What an address asks to keep: the figures of a calculator whose page shares no store with this one. */
export function Keep({ session, system, asked }: KeepProps) {
  const [brought, setBrought] = useState<Brought>({ is: 'coming' });
  const { slug, link } = asked;
  useEffect(() => {
    setBrought({ is: 'coming' });
    const load = definitionIn(slug);
    if (load === undefined) setBrought({ is: 'unknown' });
    else
      load.then(
        (calculator) => setBrought({ is: 'there', calculator }),
        () => setBrought({ is: 'failed' }),
      );
  }, [slug]);
  const calculator = brought.is === 'there' ? brought.calculator : undefined;
  const opened = useMemo(() => calculator && fromLink(calculator, link), [calculator, link]);
  const [blank, fresh] = useMemo(() => [blankPlace(), { pastureId: newId(), waterId: newId() }] as const, [slug, link]);
  // As it stood when the address was opened: what is kept now must not count as known before it is said so.
  const own = useMemo(() => (session.place?.isDemo === true ? undefined : session.place), [calculator, link]);
  if (brought.is === 'coming') return null;
  if (brought.is === 'failed') return <p role="alert">The calculator of this address could not be loaded. {loadAgain()} Nothing was kept.</p>;
  if (calculator === undefined || opened === undefined)
    return (
      <p role="alert">
        This address names no calculator that these pages have. Nothing was kept. Open the calculation where it was made and tap “Keep as my place”
        there once more.
      </p>
    );
  if (link === '') return <p role="alert">This address carries no figures of “{calculator.title}”. Nothing was kept.</p>;
  return (
    <>
      <p>From “{calculator.title}”. Nothing is kept before you tap Keep.</p>
      {opened.notices.map((notice) => (
        <p key={notice} class="problem">
          {notice}
        </p>
      ))}
      <div class="keep-place">
        <KeepPanel
          {...{ calculator, system, own, blank, fresh, id: 'keep', texts: opened.form.this, store: session.store, placePage: '#/' }}
          isOwn={ownIn(calculator, opened.form.this, localDay(new Date()))}
          chosenIds={[]}
          onKept={({ id }) => void session.open(id)}
        />
      </div>
    </>
  );
}
