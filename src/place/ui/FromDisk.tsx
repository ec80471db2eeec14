import { useState } from 'preact/hooks';
import { formAddress } from './formAddress.ts';
import { givenAddress } from './givenAddress.ts';
import { partsPages } from './partsPages.ts';
import type { View } from './view.ts';

/** What was seen when these pages were opened from a folder in each. */
const seen = [
  ['What you keep', 'one store for all pages on this disk', 'one store for each page, kept between starts'],
  ['Copying, files, several windows', 'work', 'work'],
  ['A data file beside the page', 'cannot be read', 'cannot be read'],
  ['Calculators and this place', 'see each other', 'do not: open them from the list below, and bring results back with “Keep as my place”'],
] as const;

/** At the top of the page where the pages lie in a folder: what works there, and the way round what does not; or, where a laptop hands it out, how far a place is kept. */
export function FromDisk(view: View) {
  const [told, setTold] = useState('');
  const { place } = view.session;
  if (location.protocol !== 'file:')
    return (
      <p class="from-disk">
        These pages are handed out from a folder. What you keep here is found again on this device, at {location.host} alone: save a file before you
        leave.
      </p>
    );
  return (
    <>
      {!place && partsPages() && (
        <p class="from-disk">Was this folder elsewhere before, or called otherwise? Put it back there, or open your file.</p>
      )}
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
        <p>
          Other browsers were not tried. Whatever yours does, a saved file holds everything: save one before you close the window, and before you move
          or rename the folder.
        </p>
        {place && (
          <>
            <p>Open a calculator with the figures of {place.name} in its address:</p>
            <ul class="from-disk-list">
              {view.forms.map(({ slug, title }) => (
                <li key={slug}>
                  <a
                    href={formAddress(slug)}
                    onClick={(event) => {
                      event.preventDefault();
                      givenAddress({ ...view, place }, slug, event.currentTarget.href).then(
                        (address) => location.assign(address),
                        () => setTold('That calculator could not be loaded from this folder.'),
                      );
                    }}
                  >
                    {title}
                  </a>
                </li>
              ))}
            </ul>
            <p role="alert">{told}</p>
          </>
        )}
      </details>
    </>
  );
}
