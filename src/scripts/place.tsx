// The page of what a person keeps. Nothing of it is drawn at build: there is nobody's place there.

import '../office/takeLate.ts';
import type { OfficeSaid } from '../office/said.ts';
import { startApp } from '../place/ui/startApp.tsx';
import { forget, keep, kept, oldRainKey, pickedCountry, placeKey, recordKeyOf, unitsKey } from './kept.ts';

/** Calculators by name, as the built page lists them: `ring-test 2 Infiltration rate from a ring test`, a line each. */
const formsIn = (text = ''): readonly { readonly slug: string; readonly version: number; readonly title: string }[] =>
  text.split('\n').flatMap((line) => {
    const [, slug, version, title] = /^(\S+) (\d+) (.+)$/.exec(line.trim()) ?? [];
    return slug === undefined || title === undefined ? [] : [{ slug, version: Number(version), title }];
  });

/** The office whose copy this is. Without its script, or with a file that cannot be used, there is none. */
async function officeHere(): Promise<OfficeSaid | undefined> {
  if ((globalThis.holdwaterOffice ?? '{}') === '{}') return undefined;
  const [{ readHere }, { officeSlug }, { officeSaid }] = await Promise.all([
    import('../office/readHere.ts'),
    import('../office/here.ts'),
    import('../office/said.ts'),
  ]);
  const office = readHere();
  return office && officeSaid(office, pickedCountry() === officeSlug);
}
const noOffice = (error: unknown): undefined => {
  console.info(error);
  return undefined;
};

const box = document.querySelector<HTMLElement>('#place');
if (box) {
  void officeHere()
    .catch(noOffice)
    .then((office) =>
      startApp({
        box,
        office,
        units: {
          read: () => (kept('localStorage', unitsKey) === 'si' ? 'si' : 'us'),
          write: (system) => void keep('localStorage', unitsKey, system),
        },
        edition: box.dataset['edition'] ?? 'not said',
        built: { day: box.dataset['built'] ?? '', likelyDays: box.dataset['likelyDays'] ?? '' },
        forms: formsIn(box.dataset['forms']),
        mark: {
          read: () => kept('localStorage', placeKey) ?? undefined,
          write: (id) => (id === undefined ? forget('localStorage', placeKey) : void keep('localStorage', placeKey, id)),
        },
        oldRain: {
          read: () => (kept('localStorage', oldRainKey) === null ? (kept('localStorage', recordKeyOf('rainRecord')) ?? undefined) : undefined),
          settle: () => void keep('localStorage', oldRainKey, 'yes'),
        },
        texts: {
          read: (key) => kept('localStorage', key),
          write: (key, text) => void keep('localStorage', key, text),
          remove: (key) => forget('localStorage', key),
        },
      }),
    )
    .catch((error: unknown) => {
      console.error(error);
      box.textContent = 'What is kept here could not be opened. Load the page again; nothing was changed.';
    });
}
