// What a form does without for its first moment: its picture, all its results, the working, paper, what is carried on. Fetched once the form is live; in a guide with it.
import { hydrate, render } from 'preact';
import type { Calculator } from '../../calculators/kit/define.ts';
import { picturesOf } from '../../calculators/kit/pictures.ts';
import { allPieces, Below, type BelowProps } from '../../calculators/ui/Below.tsx';
import type { Change, Reach } from '../../calculators/ui/formProps.ts';
import { boxPxIn, LaterPart, type Told } from '../../calculators/ui/LaterPart.tsx';
import { type DrawPicture, loadPictures } from '../../calculators/ui/pictures/loadPicture.tsx';
import { stayPut } from '../../calculators/ui/stayPut.ts';
import type { AtPlace } from '../place/form/types.ts';
import { loadAgain, pageAt } from '../site/folder.ts';
import { breath } from './breath.ts';
import { startPrint } from './print.ts';
import type { LaterBoxes } from './waitForLater.ts';
import { startWorking } from './working.ts';

export interface LiveForm {
  readonly box: HTMLElement;
  readonly boxes: LaterBoxes;
  readonly id: string;
  readonly calculator: Calculator;
  /** Of this calculator, without its numbers. */
  readonly page: string;
  readonly ownsAddress: boolean;
  readonly at: AtPlace | undefined;
  readonly reach: Reach;
  /** As the page was built, where it was; what stands in its boxes is of these answers. */
  readonly built: Change;
  readonly now: Change;
}
/** What follows each change of a form, once it is there. */
export interface Following {
  /** The picture and the note, close behind the answer. */
  readonly show: (told: Told) => void;
  /** All else. */
  readonly follow: (change: Change) => void;
}

const carryMs = 500;
type NamesNow = typeof import('./names.ts').namesNow;

/**
 * Fetches what draws the pictures that show with these answers. Returns what brings everything to life.
 * @throws Error if a script cannot be had
 */
export async function bringLater(
  calculator: Calculator,
  answers: Readonly<Record<string, unknown>>,
): Promise<(form: LiveForm) => Promise<Following>> {
  const Picture = await loadPictures(picturesOf(calculator, answers));
  return (form) => startLater(form, Picture);
}

async function startLater(
  { box, boxes, id, calculator, page, ownsAddress, at, reach, built, now }: LiveForm,
  Picture: DrawPicture,
): Promise<Following> {
  // At the office's own copy, where it has named one. A page on a disk has no address that leads anywhere else, unless its folder was told where it is published.
  const { dataset } = document.documentElement;
  const published = () =>
    dataset['copyAt'] ? `${dataset['copyAt']}calculators/${calculator.slug}/` : location.protocol === 'file:' ? undefined : page;
  let namesNow: NamesNow | undefined;
  const toWorking = startWorking(box, calculator);
  // A guide prints as a guide; a sheet is printed from the calculator's own page.
  const paper = ownsAddress ? startPrint(calculator, { Picture, address: published, names: (title) => namesNow?.(title) }) : undefined;
  const live: Omit<BelowProps, 'told' | 'link' | 'calculator' | 'id' | 'Picture'> = {
    address: (link) => published() && `${published()}?${link}`,
    leadAddress: ({ page: to, query }) => pageAt(`../../${to}/${query === '' ? '' : `?${query}`}`, page),
    ...(paper && { onPrint: paper.print }),
    headingOf: (title) => (namesNow ? namesNow(title).heading : title),
    onKeep: async (host, as) => {
      const { keepHere } = await import('../place/form/keepHere.ts');
      await keepHere(as, { host, box, id, calculator, change: reach.now() });
    },
    loadAgain,
  };
  const [firstPx, morePx] = [boxPxIn(boxes.pictured), boxPxIn(boxes.below)];
  const common = { calculator, id, Picture };
  let hasAnswer = now.outcome !== null;
  const show = (told: Told) => {
    const draw = () => render(<LaterPart {...common} told={told} boxPx={firstPx} />, boxes.pictured);
    if (hasAnswer === (told.outcome !== null)) draw();
    else stayPut(draw);
    hasAnswer = told.outcome !== null;
  };
  const results = (change: Change) => ({ ...common, told: change, link: change.link, boxPx: morePx });
  const follow = (change: Change) => {
    toWorking(change);
    paper?.follow(change);
    render(<Below {...results(change)} {...live} />, boxes.below);
  };
  // The first rendering of what was built must equal it: a form that runs long may hold other words already beside the same answers. Of other answers it is
  // drawn anew.
  if (ownsAddress && now.outcome === built.outcome) {
    hydrate(<LaterPart {...common} told={built} boxPx={firstPx} isBuilt />, boxes.pictured);
    await breath();
    hydrate(<Below {...results(built)} isBuilt />, boxes.below);
    await breath();
    // A link may set another side beside the built one.
    if (now.other !== built.other) show(now);
  } else {
    for (const each of Object.values(boxes)) each.replaceChildren();
    show(now);
    if (ownsAddress)
      for (let pieces = 1; pieces < allPieces; pieces += 1) {
        await breath();
        render(<Below {...results(now)} {...live} pieces={pieces} />, boxes.below);
      }
    if (ownsAddress) await breath();
  }
  follow(now);
  /** Undo and what else is carried on comes once the page is quiet; into a guide, of all that, only what keeps the focus. */
  setTimeout(() => {
    const behind: Promise<unknown> = ownsAddress
      ? import('../place/carry/startCarrying.tsx').then(async ({ startCarrying }) => {
          await breath();
          namesNow = startCarrying({ box, id, calculator, page, at, reach, start: now });
        })
      : import('../../calculators/ui/keepFocus.ts');
    behind.catch(console.info);
    void import('../../calculators/ui/readAloud.ts')
      .then(({ readAloud }) => readAloud(boxes.below.closest('form') ?? boxes.below))
      .catch(console.info);
  }, carryMs);
  return { show, follow };
}
