/** Puts an office's values, lines and name into the page, as text. Fetched only where `office.css` holds any, or is wrong. */
import { applyOffice } from '../office/applyOffice.tsx';
import { setOfficeAside } from '../office/here.ts';
import { readOffice } from '../office/readHere.ts';
import { pickedCountry } from './kept.ts';

const read = readOffice();
if (read.is === 'read') applyOffice(document, read.office, pickedCountry());
else setOfficeAside();
if (read.is === 'wrong') {
  for (const bar of document.querySelectorAll<HTMLElement>('[data-office-bar]')) {
    const say = (text: string): void => {
      bar.append(Object.assign(document.createElement('p'), { textContent: text }));
    };
    say('office.css cannot be used. The values of the site stand as they are.');
    for (const each of read.say) say(each);
    bar.hidden = false;
  }
}
