import { useEffect, useState } from 'preact/hooks';
import { noteOf } from '../../../calculators/kit/note.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import type { Result } from '../model/result.ts';
import { definitionOf } from './definitions.ts';
import type { PlaceView } from './view.ts';

interface Now {
  readonly note: string;
  readonly changes: readonly string[];
}
/** What the same answers give today. */
async function nowOf({ slug, link, version }: Result, system: PlaceView['system']): Promise<Now> {
  const calculator = await definitionOf(slug);
  await calculator.fetchEngine?.();
  const { form } = fromLink(calculator, link);
  const ran = runTexts(calculator, form.this, system);
  const changes = calculator.changes.filter((each) => each.version > version).map(({ say }) => say);
  return { note: 'outcome' in ran ? noteOf({ ...calculator, weighsOnPeople: false }, ran.outcome) : 'It refuses these answers now.', changes };
}

/** The calculator has changed since a result was kept: what stood, and what it says now, both in sight. */
export function Since({ result, view }: { readonly result: Result; readonly view: PlaceView }) {
  const [now, setNow] = useState<Now | 'failed' | undefined>(undefined);
  useEffect(() => {
    nowOf(result, view.system).then(setNow, () => setNow('failed'));
  }, [result.id]);
  return (
    <div class="place-bar is-reminder">
      <p>
        <b>The calculator has changed since this was kept.</b> What stands above is as it was.
      </p>
      {now === 'failed' && <p>What it says now could not be worked out here. Open it to see.</p>}
      {now !== undefined && now !== 'failed' && (
        <>
          <p>Now it says: {now.note}</p>
          {now.changes.map((each) => (
            <p key={each}>What changed: {each}</p>
          ))}
        </>
      )}
    </div>
  );
}
