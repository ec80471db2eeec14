import { forget, kept, placeKey } from '../../scripts/kept.ts';

/** Above any page while the invented place is open, with the way to be rid of it. The place’s own page says it by itself. */
const main = document.querySelector('#main');
const id = kept('localStorage', placeKey);
if (main && id !== null && !document.querySelector('#place')) {
  const line = document.createElement('p');
  line.className = 'demo-line';
  const words = document.createElement('b');
  words.textContent = 'Demo place: invented. Nothing here is yours.';
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'Throw it away';
  button.addEventListener('click', async () => {
    const { removePlace } = await import('./openHere.ts');
    await removePlace(id);
    forget('localStorage', placeKey);
    location.reload();
  });
  line.append(words, ' ', button);
  main.prepend(line);
}
