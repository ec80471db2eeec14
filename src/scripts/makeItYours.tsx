// The forms of an office: what they hold stays in this browser until it is saved as a file.
import { render } from 'preact';
import { localDay } from '../../calculators/units/days.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import { draftFrom } from '../office/draft.ts';
import '../office/takeLate.ts';
import { readHere } from '../office/readHere.ts';
import { MakeItYours, type MakeItYoursProps } from '../office/ui/MakeItYours.tsx';
import { keptWorks } from '../office/work.ts';
import { keep, kept } from './kept.ts';

const files = import.meta.glob<{ default: unknown }>('../../content/local/*.json');

const box = document.querySelector<HTMLElement>('#make-it-yours');
if (box) {
  const countries: MakeItYoursProps['countries'] = JSON.parse(box.dataset['countries'] ?? '[]');
  const sources = new Map<string, string>(Object.entries(JSON.parse(box.dataset['sources'] ?? '{}')));
  const today = isoDay(localDay(new Date()));
  const office = readHere();
  box.replaceChildren();
  render(
    <MakeItYours
      countries={countries}
      today={today}
      begin={async (slug) => {
        const load = files[`../../content/local/${slug}.json`];
        if (!load) throw new RangeError(`no kind of country ${slug}`);
        const { default: country } = await load();
        return draftFrom(slug, country, (key) => sources.get(key) ?? key, today);
      }}
      kept={keptWorks({ kept: (key) => kept('localStorage', key), keep: (key, text) => keep('localStorage', key, text) })}
      here={office && JSON.parse(JSON.stringify(office))}
    />,
    box,
  );
  box.dataset['ready'] = '';
}
