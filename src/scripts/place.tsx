// The page of what a person keeps. Nothing of it is drawn at build: there is nobody's place there.
import { startApp } from '../place/ui/startApp.tsx';
import { forget, keep, kept, oldRainKey, placeKey, recordKeyOf, unitsKey } from './kept.ts';

const box = document.querySelector<HTMLElement>('#place');
if (box) {
  void startApp({
    box,
    system: kept('localStorage', unitsKey) === 'si' ? 'si' : 'us',
    edition: box.dataset['edition'] ?? 'not said',
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
  }).catch((error: unknown) => {
    console.error(error);
    box.textContent = 'What is kept here could not be opened. Load the page again; nothing was changed.';
  });
}
