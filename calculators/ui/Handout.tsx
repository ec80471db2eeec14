import { render } from 'preact';
import { officeOnPage } from './officeOnPage.ts';
import { Behind } from './paper/Behind.tsx';
import { FirstPage } from './paper/FirstPage.tsx';
import { mergeWorking } from './paper/mergeWorking.ts';
import { heldOf, type PaperProps } from './paper/paperProps.ts';
import { otherTexts } from './sides.ts';

/** What fits both letter and A4, less a hair. */
const pageMm = 258;
const pxPerMm = 96 / 25.4;
/** From roomy to close, until the first page is one page. All but the last keep to 10 points. */
const closeness = ['', 'is-close', 'is-closer', 'is-closest', 'is-bare', 'is-small'];

/** What a column of the working would cut off takes the width of the page. */
function widen(box: HTMLElement): void {
  const isCut = (part: Element): boolean => part.scrollWidth > part.clientWidth + 1;
  for (const each of box.querySelectorAll('.is-working :is(.step, .paper-table)'))
    if ([each, ...each.querySelectorAll('.formula, .scroll')].some(isCut)) each.classList.add('is-wide');
}

/** Draws both sides of a sheet into a box, at once: a browser prints when the call for it returns. */
export function drawPaper(box: HTMLElement, props: PaperProps): void {
  const { calculator, change, behind, working } = props;
  const theirs = otherTexts(calculator, change.form);
  const held = heldOf(props);
  const from = officeOnPage();
  // Drawn anew each time: the steps are put in by hand.
  render(null, box);
  render(
    <>
      <FirstPage {...props} {...from} />
      <Behind {...props} {...from} />
    </>,
    box,
  );
  for (const [index, { list }] of behind.entries()) box.querySelector(`[data-behind="${index}"]`)?.append(list.cloneNode(true));
  if (held)
    box
      .querySelector('[data-worked]')
      ?.append(
        mergeWorking(
          working,
          calculator,
          { title: held.titles[0], is: 'this', texts: change.form.this, outcome: held.outcome },
          held.other && theirs && { title: held.titles[1], is: 'that', texts: theirs, outcome: held.other },
        ),
      );
  widen(box);
  const page = box.querySelector<HTMLElement>('.is-handout');
  for (const each of closeness) {
    page?.setAttribute('class', `sheet-page is-handout ${each}`);
    const picture = each === 'is-bare' && page?.querySelector('.paper-picture');
    if (picture) box.querySelector('.paper-columns')?.before(picture);
    if (page && page.getBoundingClientRect().height <= pageMm * pxPerMm) break;
  }
}
