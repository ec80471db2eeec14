import { leavesRecord } from '../../kit/link.ts';
import { Big, leadOf } from '../Answer.tsx';
import { figureFor, rangeBetween } from '../between.ts';
import { cautionsHeld } from '../Cautions.tsx';
import { helpText } from '../helpText.ts';
import { otherTexts } from '../sides.ts';
import { Days } from './Days.tsx';
import { Agreed, Foot, Head } from './HeadAndFoot.tsx';
import { Lines, PutIn } from './PutIn.tsx';
import { type Held, heldOf, type PaperProps } from './paperProps.ts';
import { Results, resultNames } from './Results.tsx';

const pictureWidthPx = 390;
const mostResults = 6;

const Stamp = ({ stamp: { is, text } }: Pick<PaperProps['change'], 'stamp'>) => (is === 'yours' ? null : <p class="paper-stamp">{text}</p>);

function Range({ held }: { readonly held: Held }) {
  const { calculator, outcome, other, system } = held;
  const lead = leadOf(calculator, outcome);
  const says = other ? rangeBetween({ calculator, outcome, other, system }) : lead && outcome.ranges[lead.of];
  return says === undefined || says === '' ? null : <p class="range">{says}</p>;
}

/** Both sides' notes by name, or the one there is. */
export const Notes = ({ held: { outcome, other, titles } }: { readonly held: Held }) =>
  other ? (
    <>
      <p class="note">
        <b class="word-this">{titles[0]}:</b> {outcome.note}
      </p>
      <p class="note">
        <b class="word-that">{titles[1]}:</b> {other.note}
      </p>
    </>
  ) : (
    <p class="note">{outcome.note}</p>
  );

const Leads = ({ held: { outcome, other, titles } }: { readonly held: Held }) => (
  <div class="paper-bars">
    {cautionsHeld(outcome, other, titles).map(({ lead, side }) => (
      <p class="paper-bar" key={lead}>
        {side !== '' && <b class={side === titles[0] ? 'word-this' : 'word-that'}>{side}: </b>}
        {lead}
      </p>
    ))}
  </div>
);

/** All that a handout needs, and nothing that opens. */
export function FirstPage(props: PaperProps) {
  const { calculator, change, Picture, question, address, office, officeLines } = props;
  const { form, system, link } = change;
  const theirs = otherTexts(calculator, form);
  const hasRecord = [form.this, theirs].some((texts) => texts && leavesRecord(calculator.inputs, texts));
  const held = heldOf(props);
  return (
    <section class="sheet-page is-handout">
      <Head question={question} title={props.title} by={props.by} office={office} />
      {held && <Leads held={held} />}
      {held ? (
        <div class="paper-body">
          {calculator.picture && Picture && (
            <div class="paper-picture">
              <Picture {...held} picture={calculator.picture} titles={change.saying} id="paper-picture" widthPx={pictureWidthPx} />
            </div>
          )}
          <Stamp stamp={change.stamp} />
          <Big figure={figureFor(calculator, held.outcome, held.other, system)} />
          <Range held={held} />
          <Notes held={held} />
          {calculator.weighsOnPeople && <p class="paper-help">{helpText(officeLines)}</p>}
          <PutIn calculator={calculator} mine={form.this} theirs={theirs} titles={held.titles} system={system} />
          <Days {...held} />
          <section class="paper-results">
            <h2>Results</h2>
            <Results {...held} names={resultNames(held).slice(0, mostResults)} />
          </section>
        </div>
      ) : (
        <>
          <p class="paper-waits">No answer yet: it waits for what stands open here.</p>
          {calculator.weighsOnPeople && <p class="paper-help">{helpText(officeLines)}</p>}
          <Lines calculator={calculator} texts={form.this} system={system} />
        </>
      )}
      <Agreed />
      <Foot address={address} link={link} isEmpty={!held} hasRecord={hasRecord} />
    </section>
  );
}
