// Undo, recent calculations, a copy, and the names on paper, at the head of a calculator; and what keeps the focus in it. Fetched a little after the form.
import { hydrate } from 'preact';
import type { Calculator } from '../../../calculators/kit/define.ts';
import { figureFor } from '../../../calculators/ui/between.ts';
import type { Change, Reach } from '../../../calculators/ui/formProps.ts';
import '../../../calculators/ui/keepFocus.ts';
import { forget, keep, kept, placeKey, unitsKey } from '../../scripts/kept.ts';
import { byKey, forKey, namesNow } from '../../scripts/names.ts';
import { whoseKey, whoseText } from '../../scripts/whose.ts';
import { pageAt } from '../../site/folder.ts';
import { chosenKey, whoseOf } from '../form/chosen.ts';
import type { AtPlace } from '../form/types.ts';
import { newId } from '../store/ids.ts';
import { type Carrying, CarryOn } from './CarryOn.tsx';
import { forgetRecents, keepRecent, type Recent, readRecents } from './recents.ts';
import { changedIn, Steps, type Stood } from './undo.ts';

interface Parts {
  readonly box: HTMLElement;
  readonly id: string;
  readonly calculator: Calculator;
  /** Of this calculator, without its numbers. */
  readonly page: string;
  readonly at: AtPlace | undefined;
  readonly reach: Reach;
  /** As the form stood when it was opened. */
  readonly start: Change;
}

/** Which calculation of the list this window is on, by its page. */
const recentKey = (path: string): string => `holdwater-recent:${path}`;
const pathOf = (address: string): string => new URL(address).pathname;
const addressOf = (page: string, { slug, link }: Pick<Recent, 'slug' | 'link'>): string => pageAt(`../${slug}/?${link}`, page);

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLElement && target.isContentEditable) ||
  (target instanceof HTMLInputElement && !/^(?:radio|checkbox|button|file)$/.test(target.type));

function sayOf(calculator: Calculator, { outcome, other, system }: Change): string | undefined {
  const figure = outcome ? figureFor(calculator, outcome, other, system) : undefined;
  return figure && [figure.figure, figure.unit, figure.what].filter((each) => each !== '').join(' ');
}

/** Gives what names a calculation on paper and in notes. */
export function startCarrying({ box, id, calculator, page, at, reach, start }: Parts): typeof namesNow {
  const root = box.querySelector<HTMLElement>('[data-carry-on]');
  if (!root) return namesNow;
  const path = pathOf(page);
  const stood = (change: Change): Stood => ({ change, chosen: at?.chosen() ?? [] });
  const steps = new Steps(stood(start));
  const heard = new Set<() => void>();
  const tell = (): void => {
    for (const hear of heard) hear();
  };
  // The same calculation as before a reload, or one that was opened from the list.
  const [ownId = '', ownLink] = (kept('sessionStorage', recentKey(path)) ?? '').split(' ');
  let recentId = ownId !== '' && ownLink === start.link ? ownId : newId();
  const goesOnAs = (link: string): void => void keep('sessionStorage', recentKey(path), `${recentId} ${link}`);
  let keeping: Promise<void> = Promise.resolve();
  const keepNow = (change: Change): Promise<void> => {
    const says = sayOf(calculator, change);
    if (says === undefined) return keeping;
    goesOnAs(change.link);
    const { slug, title } = calculator;
    const chosen = at?.chosen() ?? [];
    const recent: Recent = {
      ...{ id: recentId, slug, title, says, chosen, link: change.link, at: new Date().toISOString() },
      ...{ whose: at ? whoseOf(at.place, chosen) : (kept('sessionStorage', forKey) ?? ''), marks: whoseText(change), placeId: at?.place.id },
    };
    keeping = keeping.then(() => keepRecent(recent)).catch(console.info);
    return keeping;
  };
  let due: number | undefined;
  /** What was finished before this becomes a step of its own. */
  const settle = (): void => {
    if (due === undefined) return;
    clearTimeout(due);
    due = undefined;
    const change = reach.now();
    if (!steps.take(stood(change))) return;
    tell();
    void keepNow(change);
  };
  /** Something may be finished: looked at once the form has drawn it. */
  const look = (): void => {
    clearTimeout(due);
    due = window.setTimeout(settle);
  };
  for (const kind of ['change', 'click', 'focusout']) box.addEventListener(kind, look);
  // On a busy device the next touch comes before the look at the last one: two steps would be one.
  for (const kind of ['input', 'change', 'click']) box.addEventListener(kind, settle, true);

  const undo = (): string => {
    const now = stood(reach.now());
    const to = steps.back(now);
    if (!to) return 'There is nothing to undo.';
    if (to.change.system !== now.change.system) keep('localStorage', unitsKey, to.change.system);
    if (to.chosen.join() !== now.chosen.join()) at?.recall(to.chosen);
    reach.open({ ...to.change, notices: [] });
    tell();
    void keepNow(to.change);
    return `Taken back: ${changedIn(calculator, now, to)}.`;
  };
  addEventListener('keydown', (event) => {
    const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && !event.altKey && event.key.toLowerCase() === 'z';
    // Inside a text field the browser takes back letters.
    if (!isUndo || isTyping(event.target) || steps.count === 0) return;
    event.preventDefault();
    root.querySelector<HTMLButtonElement>('[data-carry="undo"]')?.click();
  });
  const carrying: Carrying = {
    count: () => steps.count,
    undo,
    recents: () => keeping.then(readRecents),
    forget: forgetRecents,
    addressOf: (recent) => addressOf(page, recent),
    reopen: (recent) => {
      const to = pathOf(addressOf(page, recent));
      keep('localStorage', whoseKey(to, recent.slug), recent.marks);
      keep('sessionStorage', recentKey(to), `${recent.id} ${recent.link}`);
      if (recent.chosen.length > 0 && recent.placeId === kept('localStorage', placeKey))
        keep('sessionStorage', chosenKey(to, recent.slug), recent.chosen.join(','));
      else forget('sessionStorage', chosenKey(to, recent.slug));
    },
    duplicate: async () => {
      const change = reach.now();
      if (sayOf(calculator, change) === undefined) return 'There is no answer yet to make a copy of.';
      await keepNow(change);
      recentId = newId();
      goesOnAs(change.link);
      return 'This one stays under Recent as it is. You go on with a copy of it.';
    },
    names: () => ({ who: kept('sessionStorage', forKey) ?? '', by: kept('localStorage', byKey) ?? '' }),
    name: ({ who, by }) => {
      keep('sessionStorage', forKey, who.trim() === '' ? '' : who);
      keep('localStorage', byKey, by.trim() === '' ? '' : by);
      tell();
    },
    hasPlace: at !== undefined,
    listen: (hear) => {
      heard.add(hear);
      return () => heard.delete(hear);
    },
  };
  hydrate(<CarryOn id={id} carrying={carrying} />, root);
  root.dataset['live'] = '';
  return namesNow;
}
