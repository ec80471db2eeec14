import { cautionsHeld } from '../Cautions.tsx';
import { ResultsList } from '../ResultsList.tsx';
import { RowsResult } from '../RowsResults.tsx';
import { rowsOf } from './days.ts';
import { Notes } from './FirstPage.tsx';
import { Head } from './HeadAndFoot.tsx';
import { type Held, heldOf, type PaperProps } from './paperProps.ts';
import { Results, resultNames } from './Results.tsx';

/** More than this do not fit into half of a page. */
const mostColumns = 6;
/** Every table of results in full, of both sides. */
const Tables = ({ calculator, outcome, other, titles, system }: Held) => (
  <>
    {calculator.results.flatMap(({ of }) => {
      const quantity = calculator.quantities[of];
      if (quantity?.kind !== 'rows') return [];
      return [outcome, other].flatMap((side, index) => {
        const rows = rowsOf(side, of);
        if (!side?.shown.includes(of) || rows.length === 0) return [];
        const title = other ? `${quantity.label}: ${titles[index === 0 ? 0 : 1]}` : quantity.label;
        return [
          <div key={`${of}-${index}`} class={Object.keys(quantity.columns).length > mostColumns ? 'paper-table is-wide' : 'paper-table'}>
            <RowsResult quantity={quantity} rows={rows} system={system} title={title} />
          </div>,
        ];
      });
    })}
  </>
);

/** The pages behind: all results, each step, what the cautions mean. */
export function Behind(props: PaperProps) {
  const { calculator, question, behind, title, by, office } = props;
  const held = heldOf(props);
  return (
    <section class="sheet-page is-working">
      <Head question={question} title={title} by={by} office={office} isBehind />
      <div class="paper-columns">
        {held && (
          <>
            <div class="paper-notes">
              <h2>In words</h2>
              <Notes held={held} />
            </div>
            <div class={held.other ? 'is-wide' : undefined}>
              <h2>All results</h2>
              {held.other ? (
                <Results {...held} names={calculator.results.map(({ of }) => of).filter((of) => resultNames(held).includes(of))} />
              ) : (
                <ResultsList {...held} />
              )}
            </div>
            <h2>Step by step</h2>
            <div data-worked />
            <h2>Cautions</h2>
            {cautionsHeld(held.outcome, held.other, held.titles).map(({ lead, side, say }) => (
              <p key={lead}>
                <b>
                  {side !== '' && `${side}: `}
                  {lead}
                </b>{' '}
                {say}
              </p>
            ))}
            <Tables {...held} />
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
