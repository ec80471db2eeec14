import { useMemo } from 'preact/hooks';
import type { Led } from '../kit/leads.ts';
import { Actions, type OnKeep } from './Actions.tsx';
import { Conventions } from './Conventions.tsx';
import { Pictures, type PicturesProps } from './LaterPart.tsx';
import { Leads } from './Leads.tsx';
import { ResultsList } from './ResultsList.tsx';
import { RowsResults } from './RowsResults.tsx';

/** All results, tables, what to take along. */
export function Below({
  link,
  address,
  leadAddress,
  onPrint,
  onKeep,
  headingOf,
  ...pictured
}: PicturesProps & {
  readonly link: string;
  readonly address?: (link: string) => string;
  readonly leadAddress?: (led: Led) => string;
  readonly onPrint?: () => void;
  readonly onKeep: OnKeep | undefined;
  readonly headingOf: ((placeTitle: string | undefined) => string | undefined) | undefined;
}) {
  const { told, calculator } = pictured;
  const { outcome, other, system, titles, form } = told;
  return useMemo(() => {
    if (!outcome) return null;
    const sides = { calculator, outcome, other, titles, system };
    return (
      <div class="below">
        <section class="results">
          <h2>All results</h2>
          <ResultsList {...sides} />
          <Conventions calculator={calculator} system={system} texts={form.this} outcome={outcome} />
        </section>
        {outcome.leads && leadAddress && <Leads leads={outcome.leads} addressOf={leadAddress} />}
        {calculator.morePictures.length > 0 && <Pictures {...pictured} places={[1]} />}
        <RowsResults {...sides} />
        <section class="take">
          <h2>Take it with you</h2>
          <Actions
            calculator={calculator}
            link={link}
            outcome={outcome}
            other={other}
            titles={titles}
            heading={() => headingOf?.(told.place?.title)}
            onKeep={onKeep}
            {...(address === undefined ? {} : { address })}
            {...(onPrint === undefined ? {} : { onPrint })}
          />
        </section>
      </div>
    );
  }, [told, link, address === undefined]);
}
