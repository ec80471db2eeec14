import { useMemo } from 'preact/hooks';
import type { Led } from '../kit/leads.ts';
import { Actions, type OnKeep } from './Actions.tsx';
import { Conventions } from './Conventions.tsx';
import { Pictures, type PicturesProps } from './LaterPart.tsx';
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
  /** Before a note: whose figures these are, with what the place that is open says. */
  readonly headingOf?: (placeTitle: string | undefined) => string | undefined;
}
/** All results, tables, what to take along. */
export function Below({ link, address, leadAddress, onPrint, onKeep, headingOf, ...pictured }: BelowProps) {
  const { told, calculator } = pictured;
  const { outcome, other, system, titles, form } = told;
  // Neither other words beside the same answers nor what is live around them draws these anew: while a long run goes on, each key would draw all its rows.
  const [list, more, rows] = useMemo(() => {
    const sides = outcome && { calculator, outcome, other, titles, system };
    return [
      sides && <ResultsList {...sides} />,
      calculator.morePictures.length > 0 && <Pictures {...pictured} places={[1]} />,
      sides && <RowsResults {...sides} />,
    ];
  }, [outcome, other, system, ...titles, ...told.differing]);
  return useMemo(() => {
    if (!outcome) return null;
    return (
      <>
        <section class="results">
          <h2>All results</h2>
          {list}
          <Conventions calculator={calculator} system={system} texts={form.this} outcome={outcome} />
        </section>
        {outcome.leads && leadAddress && <Leads leads={outcome.leads} addressOf={leadAddress} />}
        {more}
        {rows}
        <section class="take">
          <h2>Take it with you</h2>
          <Actions
            calculator={calculator}
            link={link}
            outcome={outcome}
            other={other}
            titles={titles}
            heading={() => headingOf?.(told.place?.title)}
            {...(onKeep === undefined ? {} : { onKeep })}
            {...(address === undefined ? {} : { address })}
            {...(onPrint === undefined ? {} : { onPrint })}
          />
        </section>
      </>
    );
  }, [told, link, address === undefined]);
}
