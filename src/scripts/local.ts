/** Shows the values of the country that was picked, or of all. public/country.js does so before the first paint; this takes over from it. */
import '../office/takeLate.ts';
import { countryKey, keep, pickedCountry } from './kept.ts';

const root = document.documentElement;

function show(): void {
  const picked = pickedCountry();
  const blocks = [...document.querySelectorAll<HTMLElement>('[data-local]')];
  // An edition may have other countries than the one in which it was picked.
  const country = blocks.some((block) => block.dataset['local'] === picked) ? picked : null;
  if (country === null) delete root.dataset['country'];
  else root.dataset['country'] = country;
  for (const block of blocks) {
    const isMine = block.dataset['local'] === country;
    block.hidden = country !== null && !isMine;
    if (block instanceof HTMLDetailsElement) block.open = isMine;
  }
  // Six countries would bury the steps of a guide: folded until one is picked.
  for (const all of document.querySelectorAll<HTMLDetailsElement>('[data-local-all]')) all.open = country !== null;
  for (const button of document.querySelectorAll<HTMLElement>('[data-pick]')) {
    button.hidden = false;
    button.setAttribute('aria-pressed', String(button.getAttribute('data-pick') === (country ?? '')));
  }
  document.adoptedStyleSheets = [];
  const choice = document.querySelector<HTMLElement>('[data-choice]');
  if (choice) choice.dataset['ready'] = '';
}

document.addEventListener('click', ({ target }) => {
  const button = target instanceof Element ? target.closest<HTMLElement>('[data-pick]') : null;
  if (!button) return;
  keep('localStorage', countryKey, button.dataset['pick'] ?? '');
  show();
});
// An office's values come a moment later; until then the sheet of public/country.js holds.
if ((globalThis.holdwaterOffice ?? '{}') === '{}') show();
else import('./office.ts').then(show, show);
