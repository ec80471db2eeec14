import { useState } from 'preact/hooks';
import { toLink } from '../../../calculators/kit/link.ts';
import { localDay } from '../../../calculators/units/days.ts';
import { fetchFiller, fetchParts } from '../offer/fetchParts.ts';
import { offersOf } from '../offer/offersOf.ts';
import { definitionIn } from './definitions.ts';
import { formAddress } from './formAddress.ts';
import type { View } from './view.ts';

/** What was seen when these pages were opened from a folder in each. */
const seen = [
  ['What you keep', 'one store for all pages on this disk', 'one store for each page, kept between starts'],
  ['Copying, files, several windows', 'work', 'work'],
  ['A data file beside the page', 'cannot be read', 'cannot be read'],
  ['Calculators and this place', 'see each other', 'do not: open them from the list below, and bring results back with “Keep as my place”'],
] as const;

/** At the top of the page where the pages lie in a folder: what works there, and the way round what does not. */
export function FromDisk({ session, system, forms }: View) {
  const [told, setTold] = useState('');
  const { place, now } = session;
  const open = async (slug: string): Promise<void> => {
    const calculator = await definitionIn(slug);
    if (!calculator || !place) return;
    const today = localDay(now);
    const fillTexts = await fetchFiller(calculator);
    const { texts } = fillTexts(calculator, offersOf(await fetchParts([calculator]), place, today), today, system);
    location.assign(formAddress(slug, toLink(calculator, { this: texts, that: null })));
  };
  return (
    <details class="from-disk">
      <summary>These pages are open from a folder</summary>
      <div class="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">From a folder</th>
              <th scope="col">Chrome, Edge and their kin</th>
              <th scope="col">Firefox</th>
            </tr>
          </thead>
          <tbody>
            {seen.map(([what, chromium, firefox]) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{chromium}</td>
                <td>{firefox}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>Other browsers were not tried. Whatever yours does, a saved file holds everything: save one before you close the window.</p>
      {place && (
        <>
          <p>Open a calculator with the figures of {place.name} in its address:</p>
          <ul class="from-disk-list">
            {forms.map(({ slug, title }) => (
              <li key={slug}>
                <button
                  type="button"
                  class="quiet"
                  onClick={() => void open(slug).catch(() => setTold('That calculator could not be loaded from this folder.'))}
                >
                  {title}
                </button>
              </li>
            ))}
          </ul>
          <p role="alert">{told}</p>
        </>
      )}
    </details>
  );
}
