import { render } from 'preact';
import type { Calculator, Outcome } from '../kit/define.ts';
import { shortHelpText } from '../kit/helpLines.ts';
import { printName } from '../kit/print.ts';
import { Big, leadOf, rangeBetween, scalarAt } from './Answer.tsx';
import { figureFor } from './AnswerBlock.tsx';
import type { Change } from './CalculatorForm.tsx';
import { cautionsHeld } from './Cautions.tsx';
import { Code } from './paper/Code.tsx';
import { Days } from './paper/Days.tsx';
import { daysOf, rowsOf } from './paper/days.ts';
import { mergeWorking } from './paper/mergeWorking.ts';
import { Lines, PutIn } from './paper/PutIn.tsx';
import { unlikeIn } from './paper/putIn.ts';
import type { DrawPicture } from './pictures/loadPicture.tsx';
import { difference, ResultsList } from './ResultsList.tsx';
import { RowsResult } from './RowsResults.tsx';
import { otherTexts, sideTitles } from './sides.ts';
import { stampOf } from './stamp.ts';

/** What paper is made of. */
export interface PaperProps {
  readonly calculator: Calculator;
  readonly change: Change;
  readonly Picture: DrawPicture | undefined;
  /** The reader's question, as the page asks it. */
  readonly question: string;
  /** Of the page, without its numbers. */
  readonly address: string;
  /** The drawn steps. */
  readonly working: string;
  /** What the built page holds and its script does not: limits, sources, whom to call. Each goes behind its title. */
  readonly behind: readonly { readonly title: string; readonly list: Element }[];
}

const pictureWidthPx = 390;
const mostResults = 6;

const Head = ({ question, isBehind = false }: { readonly question: string; readonly isBehind?: boolean }) => (
  <>
    <div class="paper-head">
      <b>Holdwater</b>
      <span>Place</span>
      <span>Date</span>
      <span>Adviser</span>
    </div>
    <h1>{isBehind ? `${question} The working` : question}</h1>
  </>
);

const Foot = ({
  address,
  link,
  isEmpty,
  hasRecord,
}: {
  readonly address: string;
  readonly link: string;
  readonly isEmpty: boolean;
  readonly hasRecord: boolean;
}) => (
  <div class="paper-foot">
    <Code link={isEmpty ? address : `${address}?${link}`} />
    <div>
      <p>
        <b class="paper-address">{address.replace(/^https?:\/\//, '').replace(/\/$/, '')}</b>
      </p>
      <p>
        {isEmpty
          ? 'The code opens the empty questions.'
          : hasRecord
            ? 'The code opens these answers. The record is not in it: send its file along.'
            : 'The code opens these numbers as they stand.'}{' '}
        A planning estimate: your ground, your stock and your year decide.
      </p>
    </div>
    <div class="paper-lines">
      <span>What we agreed</span>
      <span />
      <span>Look again on</span>
    </div>
  </div>
);

interface Held {
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  readonly system: Change['system'];
}

/** Results by name: alone in two columns, of two sides with the gap. */
function Results({ calculator, outcome, other, titles, system, names }: Held & { readonly names: readonly string[] }) {
  const tell = (side: Outcome, name: string): string => (side.shown.includes(name) ? printName(calculator, side.values, name, system) : '–');
  if (!other)
    return (
      <dl>
        {names.map((name) => (
          <div key={name}>
            <dt>{calculator.quantities[name]?.label}</dt>
            <dd>{tell(outcome, name)}</dd>
          </div>
        ))}
      </dl>
    );
  return (
    <table>
      <thead>
        <tr>
          <td />
          <th scope="col" class="word-this">
            {titles[0]}
          </th>
          <th scope="col" class="word-that">
            {titles[1]}
          </th>
          <th scope="col">The gap</th>
        </tr>
      </thead>
      <tbody>
        {names.map((name) => {
          const quantity = calculator.quantities[name];
          const isBoth = outcome.shown.includes(name) && other.shown.includes(name);
          return (
            quantity && (
              <tr key={name}>
                <th scope="row">{quantity.label}</th>
                <td>{tell(outcome, name)}</td>
                <td>{tell(other, name)}</td>
                <td>{isBoth ? difference(scalarAt(outcome, name), scalarAt(other, name), quantity, system) : ''}</td>
              </tr>
            )
          );
        })}
      </tbody>
    </table>
  );
}
/** Those that apply to either side, as `calculator.handout` has them first. */
function resultNames({ calculator, outcome, other }: Pick<Held, 'calculator' | 'outcome' | 'other'>): readonly string[] {
  const applies = (name: string): boolean =>
    calculator.quantities[name]?.kind !== 'rows' && (outcome.shown.includes(name) || other?.shown.includes(name) === true);
  return [...new Set([...calculator.handout, ...calculator.results.map(({ of }) => of)])].filter(applies);
}

/** Whose figures they are, while any is not the reader's own. */
function stampNow(calculator: Calculator, { form, touched, linked, system }: Change): string {
  const that = otherTexts(calculator, form);
  const unlike = that ? [...new Set(unlikeIn(calculator.inputs, form.this, that, system).map(({ key }) => key))] : [];
  const [both, one] = [
    stampOf(calculator, form.this, { touched, linked, waiting: 0, unlike }),
    stampOf(calculator, form.this, { touched, linked, waiting: 0 }),
  ];
  if (both.is !== 'yours') return both.text;
  return one.is === 'yours' ? '' : one.text;
}

/** The first page: all that a handout needs, and nothing that opens. */
function Handout({ calculator, change, Picture, question, address }: PaperProps) {
  const { form, system, outcome, other, names, link } = change;
  const hasRecord = Object.values(calculator.inputs).some(({ kind }) => kind === 'record');
  const theirs = otherTexts(calculator, form);
  const differing = sideTitles(calculator, form.this, theirs, system);
  const titles = [names[0] || 'This', names[1] || 'That'] as const;
  const lead = outcome && leadOf(calculator, outcome);
  const range = outcome && (other ? rangeBetween({ calculator, outcome, other, system }) : lead && (outcome.ranges[lead.of] ?? ''));
  const held = outcome && { calculator, outcome, other, titles, system };
  const days = outcome && daysOf(calculator, outcome);
  const stamp = outcome ? stampNow(calculator, change) : '';
  return (
    <section class="sheet-page is-handout">
      <Head question={question} />
      {outcome &&
        cautionsHeld(outcome, other, titles).map(({ lead, side }) => (
          <p class="paper-bar" key={lead}>
            {side !== '' && <b class={side === titles[0] ? 'word-this' : 'word-that'}>{side}: </b>}
            {lead}
          </p>
        ))}
      {held ? (
        <div class="paper-body">
          {calculator.picture && Picture && (
            <div class="paper-picture">
              <Picture
                calculator={calculator}
                system={system}
                picture={calculator.picture}
                outcome={held.outcome}
                other={other}
                titles={[names[0] || differing[0], names[1] || differing[1]]}
                id="paper-picture"
                widthPx={pictureWidthPx}
              />
            </div>
          )}
          {stamp !== '' && <p class="paper-stamp">{stamp}</p>}
          <Big figure={figureFor(calculator, held.outcome, other, system)} />
          {range !== undefined && range !== '' && <p class="range">{range}</p>}
          {other ? (
            <>
              <p class="note">
                <b class="word-this">{titles[0]}:</b> {held.outcome.note}
              </p>
              <p class="note">
                <b class="word-that">{titles[1]}:</b> {other.note}
              </p>
            </>
          ) : (
            <p class="note">{held.outcome.note}</p>
          )}
          {calculator.weighsOnPeople && <p class="paper-help">{shortHelpText}</p>}
          <PutIn calculator={calculator} mine={form.this} theirs={theirs} titles={titles} system={system} />
          {days !== undefined && days !== null && <Days {...held} of={days} />}
          <section class="paper-results">
            <h2>Results</h2>
            <Results {...held} names={resultNames(held).slice(0, mostResults)} />
          </section>
        </div>
      ) : (
        <>
          <p class="paper-waits">No answer yet: it waits for what stands open here.</p>
          {calculator.weighsOnPeople && <p class="paper-help">{shortHelpText}</p>}
          <Lines calculator={calculator} texts={form.this} system={system} />
        </>
      )}
      <Foot address={address} link={link} isEmpty={!outcome} hasRecord={hasRecord} />
    </section>
  );
}

/** The pages behind: all results, each step, what the cautions mean. */
function Behind({ calculator, change, question, behind }: PaperProps) {
  const { outcome, other, names, system } = change;
  const titles = [names[0] || 'This', names[1] || 'That'] as const;
  const held = outcome && { calculator, outcome, other, titles, system };
  return (
    <section class="sheet-page is-working">
      <Head question={question} isBehind />
      <div class="paper-columns">
        {held && (
          <>
            <h2>All results</h2>
            {other ? (
              <Results {...held} names={calculator.results.map(({ of }) => of).filter((of) => resultNames(held).includes(of))} />
            ) : (
              <ResultsList {...held} />
            )}
            <h2>Step by step</h2>
            <div data-worked />
            <h2>Cautions</h2>
            {cautionsHeld(held.outcome, other, titles).map(({ lead, side, say }) => (
              <p key={lead}>
                <b>
                  {side !== '' && `${side}: `}
                  {lead}
                </b>{' '}
                {say}
              </p>
            ))}
            {calculator.results.flatMap(({ of }) => {
              const quantity = calculator.quantities[of];
              if (quantity?.kind !== 'rows') return [];
              return [held.outcome, other].flatMap((side, index) => {
                const rows = rowsOf(side, of);
                if (!side?.shown.includes(of) || rows.length === 0) return [];
                const title = other ? `${quantity.label}: ${titles[index === 0 ? 0 : 1]}` : quantity.label;
                const isWide = (quantity.shown ?? Object.keys(quantity.columns)).length > 5;
                return [
                  <div key={`${of}-${index}`} class={isWide ? 'paper-table is-wide' : 'paper-table'}>
                    <RowsResult quantity={quantity} rows={rows} system={system} title={title} />
                  </div>,
                ];
              });
            })}
          </>
        )}
        {behind.map(({ title }, index) => (
          <div key={title}>
            <h2>{title}</h2>
            <div data-behind={index} />
          </div>
        ))}
      </div>
    </section>
  );
}

/** What fits both letter and A4, less a hair. */
const pageMm = 254;
const pxPerMm = 96 / 25.4;
/** From roomy to close, until the first page is one page. */
const closeness = ['', 'is-close', 'is-closer', 'is-closest'];

/** Draws both sides of a sheet into a box, at once: a browser prints when the call for it returns. */
export function drawPaper(box: HTMLElement, props: PaperProps): void {
  const { calculator, change, behind, working } = props;
  const { form, outcome, other, names } = change;
  // Drawn anew each time: the steps are put in by hand.
  render(null, box);
  render(
    <>
      <Handout {...props} />
      <Behind {...props} />
    </>,
    box,
  );
  for (const [index, { list }] of behind.entries()) box.querySelector(`[data-behind="${index}"]`)?.append(list.cloneNode(true));
  const theirs = otherTexts(calculator, form);
  const worked = box.querySelector('[data-worked]');
  if (worked && outcome)
    worked.append(
      mergeWorking(
        working,
        calculator,
        { title: names[0] || 'This', is: 'this', texts: form.this, outcome },
        other && theirs && { title: names[1] || 'That', is: 'that', texts: theirs, outcome: other },
      ),
    );
  const page = box.querySelector<HTMLElement>('.is-handout');
  for (const each of closeness) {
    page?.setAttribute('class', `sheet-page is-handout ${each}`);
    if (page && page.getBoundingClientRect().height <= pageMm * pxPerMm + 1) break;
  }
}
