import { loadAgain } from '../site/folder.ts';

/** The parts of a form that are taken over a little later than the rest, each by a root of its own. */
export interface LaterBoxes {
  /** The picture, the note. */
  readonly pictured: HTMLElement;
  /** All results, what to take along. */
  readonly below: HTMLElement;
}
const boxesIn = (root: Element): readonly HTMLElement[] => [...root.querySelectorAll<HTMLElement>('.pictured, .below')];

/** Puts aside what was built there while the form around it is taken over, which would clear it away. Returns what puts it back. */
export function putAside(root: Element): () => LaterBoxes | undefined {
  const built = boxesIn(root).map((box) => [...box.childNodes]);
  for (const node of built.flat()) node.remove();
  return () => {
    const boxes = boxesIn(root);
    for (const [place, box] of boxes.entries()) box.append(...(built[place] ?? []));
    const [pictured, below] = boxes;
    return pictured && below && { pictured, below };
  };
}

/** Picture and results as they were built, until what brings them to life has come. */
export interface Waiting {
  /** Other answers stand in the form by now: nobody shall read the old results under them. */
  readonly outdate: () => void;
  /** Brings them to life, piece by piece, and does what somebody tapped meanwhile. */
  readonly come: (start: () => Promise<void>) => Promise<void>;
  readonly stayAway: () => void;
}

/** Longer than this nobody waits for a button without a word. */
const patienceMs = 1500;

/** A tap on a button of what has not come to life is remembered until something hears it. */
export function waitForLater({ pictured, below }: LaterBoxes): Waiting {
  let tapped: string | undefined;
  let patience = 0;
  let isOver = false;
  const boxes = [pictured, below];
  const told = below.querySelector('.told');
  const remember = ({ target }: Event) => {
    const button = target instanceof Element ? target.closest('button') : null;
    if (!button) return;
    tapped = button.textContent ?? undefined;
    clearTimeout(patience);
    patience = window.setTimeout(() => {
      if (told) told.textContent = `Still loading. “${tapped}” is done when the rest of this page has come.`;
    }, patienceMs);
  };
  const buttons = () => boxes.flatMap((box) => [...box.querySelectorAll('button')]);
  for (const button of buttons()) button.disabled = false;
  for (const box of boxes) box.addEventListener('click', remember, true);
  const end = () => {
    isOver = true;
    clearTimeout(patience);
    for (const box of boxes) {
      box.removeEventListener('click', remember, true);
      delete box.dataset['waits'];
    }
  };
  return {
    outdate: () => {
      if (!isOver) for (const box of boxes) box.dataset['waits'] = '';
    },
    come: async (start) => {
      clearTimeout(patience);
      if (told) told.textContent = '';
      await start();
      end();
      if (tapped !== undefined)
        buttons()
          .find(({ textContent }) => textContent === tapped)
          ?.click();
    },
    stayAway: () => {
      end();
      // Whom to call stays.
      for (const part of pictured.querySelectorAll('.picture-box, .note')) part.remove();
      const line = document.createElement('p');
      line.className = 'problem';
      line.role = 'status';
      line.textContent = `The picture, all results, the note and printing have not come. ${loadAgain()}`;
      below.replaceChildren(line);
    },
  };
}
