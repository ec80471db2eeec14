// The page of what a person keeps. Nothing of it is drawn at build: there is nobody's place there.
import type { Calculator } from '../../calculators/kit/define.ts';
import { startApp } from '../place/ui/startApp.tsx';
import { forget, keep, kept, placeKey, unitsKey } from './kept.ts';

const definitions = import.meta.glob<{ default: Calculator }>('../../calculators/catalog/*/definition.ts');
const box = document.querySelector<HTMLElement>('#place');
if (box) {
  void startApp({
    box,
    system: kept('localStorage', unitsKey) === 'si' ? 'si' : 'us',
    edition: box.dataset['edition'] ?? 'not said',
    calculators: (slug) => definitions[`../../calculators/catalog/${slug}/definition.ts`]?.().then((found) => found.default),
    slugs: Object.keys(definitions).flatMap((path) => /([^/]+)\/definition/.exec(path)?.[1] ?? []),
    mark: {
      read: () => kept('localStorage', placeKey) ?? undefined,
      write: (id) => (id === undefined ? forget('localStorage', placeKey) : void keep('localStorage', placeKey, id)),
    },
    texts: {
      read: (key) => kept('localStorage', key),
      write: (key, text) => void keep('localStorage', key, text),
      remove: (key) => forget('localStorage', key),
    },
  }).catch((error: unknown) => {
    console.error(error);
    box.textContent = 'What is kept here could not be opened. Load the page again; nothing was changed.';
  });
}
