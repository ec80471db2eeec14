import type { CopyState } from '../copyState.ts';
import { buttonFor, megabytes } from '../copyWords.ts';

const paragraph = (text: string): HTMLElement => {
  const element = document.createElement('p');
  element.textContent = text;
  return element;
};

function counted({ kept, of }: CopyState): HTMLElement {
  const list = document.createElement('ul');
  for (const text of [
    `Guides: ${kept.guides} of ${of.guides}`,
    `Calculators: ${kept.calculators} of ${of.calculators}`,
    `Fetched: ${megabytes(kept.bytes)} of ${megabytes(of.bytes)}; on the disk it takes ${megabytes(of.roomBytes)}`,
  ]) {
    const item = document.createElement('li');
    item.textContent = text;
    list.append(item);
  }
  return list;
}

function button(text: string, press: () => void): HTMLButtonElement {
  const element = document.createElement('button');
  element.type = 'button';
  element.textContent = text;
  element.addEventListener('click', () => {
    element.disabled = true;
    press();
  });
  return element;
}

/** The page about the copy: how it stands in figures, and what can be done. */
export function showCopyHere(box: HTMLElement, state: CopyState, line: string, press: () => void): void {
  const offer = buttonFor(state);
  const isFocusLost = box.contains(document.activeElement);
  box.replaceChildren(
    paragraph(line),
    ...(state.older === undefined ? [] : [paragraph('Of the newer copy are here:')]),
    counted(state),
    ...(state.is === 'full'
      ? [paragraph('The disk is full. Delete photos, videos or apps that you can do without, then press the button. What is here already stays.')]
      : []),
    ...(offer === undefined ? [] : [button(offer, press)]),
  );
  // Whoever pressed the button goes on from here.
  if (isFocusLost) box.focus();
}
