import { type ComponentChildren, render } from 'preact';

import { allParts, isLocalKey, localKeys } from '../local/localParts.ts';
import { officeSlug } from './here.ts';
import type { Office } from './model/office.ts';
import { linesText, type OfficeSaid, officeSaid } from './said.ts';
import { HelpLine } from './ui/HelpLine.tsx';
import { LocalParts } from './ui/LocalParts.tsx';
import type { NameSource } from './ui/Sourced.tsx';

/** An office says in words where its values come from. */
const nameSource: NameSource = (source) => ({ text: source });

/** Draws into a new element, and gives it. What an office wrote is only ever text. */
function drawn<K extends keyof HTMLElementTagNameMap>(document: Document, kind: K, inside: ComponentChildren, data: DOMStringMap = {}) {
  const element = document.createElement(kind);
  Object.assign(element.dataset, data);
  render(inside, element);
  return element;
}
const ofOffice = { local: officeSlug };

function intoGuides(document: Document, { head, values }: Office): void {
  for (const box of document.querySelectorAll<HTMLElement>('[data-local-of]')) {
    const key = box.dataset['localOf'] ?? '';
    if (!isLocalKey(key)) continue;
    const parts = localKeys[key].parts(values);
    const inside = (
      <>
        <summary>{head.name}</summary>
        {parts.length === 0 ? (
          <p>{head.name} gives no values here. Those of the kinds of country stand on the page “My kind of country”.</p>
        ) : (
          <LocalParts parts={parts} nameSource={nameSource} />
        )}
      </>
    );
    const block = drawn(document, 'details', inside, ofOffice);
    block.className = 'local-country';
    box.querySelector(':scope > .local-country')?.before(block);
  }
}
function intoChoice(document: Document, { head, values, words }: Office): void {
  const list = document.querySelector('.country-choice');
  if (!list) return;
  list.prepend(
    drawn(
      document,
      'li',
      <>
        <div>
          <b>{head.name}</b>
          <p>{head.where ?? 'The office that looks after this copy.'}</p>
        </div>
        <button type="button" data-pick={officeSlug} aria-pressed="false" aria-label={`Mine is ${head.name}`}>
          Mine
        </button>
      </>,
    ),
  );
  const contact = [head.address, head.phone].filter((each) => each !== undefined).join(', ');
  const block = drawn(
    document,
    'details',
    <>
      <summary>{head.name}: all values</summary>
      {contact !== '' && <p>{contact}</p>}
      {words?.ground !== undefined && <p>A piece of fenced ground is called a {words.ground} here.</p>}
      {allParts(values).map(({ key, title, parts }) => (
        <>
          <h2 id={`${officeSlug}-${key}`}>{title}</h2>
          <LocalParts parts={parts} nameSource={nameSource} />
        </>
      ))}
    </>,
    ofOffice,
  );
  block.className = 'local-country';
  document.querySelector('main > details.local-country')?.before(block);
}
/** The office's lines before the national ones, which stay. */
function intoTalk(document: Document, { values: { talkToSomeone } }: Office, isPicked: boolean): void {
  for (const list of document.querySelectorAll('.talk > ul')) {
    const near = [...list.children].some((item) => item.textContent?.trim() === talkToSomeone.near) ? [] : [talkToSomeone.near];
    const items = [...talkToSomeone.lines.map((line) => <HelpLine key={line} line={line} nameSource={nameSource} />), ...near].map((inside) =>
      drawn(document, 'li', inside, ofOffice),
    );
    for (const item of items) {
      item.className = 'own-line';
      item.hidden = !isPicked;
    }
    list.prepend(...items);
  }
}
function intoFooter(document: Document, { name, valuesOf }: OfficeSaid): void {
  const says = `Edition of ${name} · values of ${valuesOf}`;
  document.querySelector('.bottom')?.append(drawn(document, 'p', says, { officeEdition: '' }));
}
function intoCautions(document: Document, { head, cautions = [] }: Office): void {
  const main = document.querySelector<HTMLElement>('main[data-kind="guide"], main[data-kind="calculator"]');
  if (!main || cautions.length === 0) return;
  const box = drawn(
    document,
    'aside',
    <>
      <p class="caution-title">From {head.name}</p>
      {cautions.map(({ says, source }) => (
        <p key={says}>
          {says} <span class="muted">Source:</span> {source}
        </p>
      ))}
    </>,
    { officeCautions: '' },
  );
  box.className = 'caution';
  const text = main.querySelector('.text');
  if (text) text.prepend(box);
  else (main.querySelector('.lead') ?? main.querySelector('h1'))?.after(box);
}

/** All of a page that follows the office's file. */
export function applyOffice(document: Document, office: Office, picked: string | null): void {
  const said = officeSaid(office, picked === officeSlug);
  const { dataset } = document.documentElement;
  dataset['office'] = said.name;
  if (said.lines.length > 0) dataset['officeLines'] = linesText(said);
  if (said.copyAt !== undefined) dataset['copyAt'] = said.copyAt;
  intoGuides(document, office);
  intoChoice(document, office);
  intoTalk(document, office, picked === officeSlug);
  intoFooter(document, said);
  intoCautions(document, office);
}
