import { useMemo, useRef } from 'preact/hooks';
import type { Led } from '../kit/leads.ts';
import { Actions, type OnKeep } from './Actions.tsx';
import { Conventions } from './Conventions.tsx';
import { asItIs, Pictures, type PicturesProps } from './LaterPart.tsx';
import { Leads } from './Leads.tsx';
import { ResultsList } from './ResultsList.tsx';
import { RowsResults } from './RowsResults.tsx';

export interface BelowProps extends PicturesProps {
  readonly link: string;
  /** The whole address of a link, for copying; gives nothing where no other device could open it. Not there before the form is live. */
  readonly address?: (link: string) => string | undefined;
  /** The whole address of what a result leads to. */
  readonly leadAddress?: (led: Led) => string;
  readonly onPrint?: () => void;
  /** Offers to keep what stands in the form, in a box below the result. */
  readonly onKeep?: OnKeep;
  /** What to do where a script of those did not come. */
  readonly loadAgain?: () => string;
  /** Before a note: whose figures these are, with what the place that is open says. */
  readonly headingOf?: (placeTitle: string | undefined) => string | undefined;
  /** How many of its pieces are drawn by now, from the top: a slow phone answers its reader between two of them. */
  readonly pieces?: number;
}
/** Results, pictures, tables, what to take along. */
export const allPieces = 4;

/** What was built stays as it stands until what it tells has changed; then it is drawn for good. */
function useAsBuilt(isBuilt: boolean, tells: readonly unknown[]): boolean {
  const built = useRef(isBuilt ? tells : undefined);
  if (built.current?.some((each, place) => each !== tells[place])) built.current = undefined;
  return built.current !== undefined;
}

/** All results, tables, what to take along. */
export function Below({ link, address, leadAddress, onPrint, onKeep, loadAgain, headingOf, pieces = allPieces, ...pictured }: BelowProps) {
  const { told, calculator, isBuilt = false } = pictured;
  const { outcome, other, system, titles, form } = told;
  // Other texts with the same answers are the same answers: a form that runs long has its example's for a link that says the same.
  const stays = useAsBuilt(isBuilt, [outcome, other, system, ...titles]);
  // Neither other words beside the same answers nor what is live around them draws these anew: while a long run goes on, each key would draw all its rows.
  const [list, more, rows] = useMemo(() => {
    const sides = outcome && { calculator, outcome, other, titles, system };
    return [
      sides && <ResultsList {...sides} />,
      calculator.morePictures.length > 0 && <Pictures {...pictured} places={[1]} />,
      sides && <RowsResults {...sides} />,
    ];
  }, [outcome, other, system, ...titles, ...told.saying]);
  return useMemo(() => {
    if (!outcome) return null;
    return (
      <>
        {stays ? (
          <section key="built" class="results" dangerouslySetInnerHTML={asItIs} />
        ) : (
          <section key="drawn" class="results">
            <h2>All results</h2>
            {list}
            <Conventions calculator={calculator} system={system} texts={form.this} outcome={outcome} />
          </section>
        )}
        {pieces > 1 && outcome.leads && leadAddress && <Leads leads={outcome.leads} addressOf={leadAddress} />}
        {pieces > 1 && more}
        {stays ? (
          <div key="tables-built" class="tables" dangerouslySetInnerHTML={asItIs} />
        ) : (
          <div key="tables-drawn" class="tables">
            {pieces > 2 && rows}
          </div>
        )}
        {pieces > 3 && (
          <section class="take">
            <h2>Take it with you</h2>
            <Actions
              calculator={calculator}
              link={link}
              outcome={outcome}
              other={other}
              titles={told.saying}
              between={told.between}
              heading={() => headingOf?.(told.place?.title)}
              {...(onKeep === undefined ? {} : { onKeep })}
              loadAgain={loadAgain}
              {...(address === undefined ? {} : { address })}
              {...(onPrint === undefined ? {} : { onPrint })}
            />
          </section>
        )}
      </>
    );
  }, [told, link, address === undefined, pieces]);
}
