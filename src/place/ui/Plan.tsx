import { useEffect, useState } from 'preact/hooks';
import type { Calculator } from '../../../calculators/kit/define.ts';
import { localDay } from '../../../calculators/units/days.ts';
import sheet from '../../../content/sheets/drought-plan.json' with { type: 'json' };
import { loadAgain, pageAt } from '../../site/folder.ts';
import { resultKind } from '../store/visitKinds.ts';
import { type Plan, planOf } from '../visit/plan.ts';
import { definitionOf } from './definitions.ts';
import { formAddress } from './formAddress.ts';
import { useKept } from './keptRecords.ts';
import type { PlaceView } from './view.ts';

type Part = (typeof sheet.parts)[number];
type TablePart = Extract<Part, { columns: unknown }>;

const percentOf = (percent: number): { readonly width: string } => ({ width: `${percent}%` });

function FilledTable({ part, plan }: { readonly part: TablePart; readonly plan: Plan }) {
  const { title, columns, rows, height } = part;
  const lines: readonly (readonly string[])[] =
    typeof rows === 'number'
      ? Array.from({ length: Math.max(rows, plan.dates.length) }, (_, index) => plan.dates[index] ?? [])
      : rows.map((name) => [name, ...(plan.lines.get(name) ?? [])]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: who has no mouse scrolls it by keys
    <section class="wide" tabIndex={0} aria-label={title}>
      <table class={`to-fill-table is-${height}`}>
        <caption>{title}</caption>
        <colgroup>
          {columns.map(({ name, percent }) => (
            <col key={name} style={percentOf(percent)} />
          ))}
        </colgroup>
        <thead>
          <tr>
            {columns.map(({ name }) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((cells, index) => (
            <tr key={String(index)}>
              {columns.map(({ name }, at) =>
                typeof rows !== 'number' && at === 0 ? (
                  <th key={name} scope="row">
                    {cells[0]}
                  </th>
                ) : (
                  <td key={name}>{cells[at]}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
function FilledPart({ part, plan }: { readonly part: Part; readonly plan: Plan }) {
  if ('fields' in part && part.fields)
    return (
      <dl class="to-fill">
        {part.fields.map(({ label, sixths }) => (
          <div key={label} style={{ '--sixths': sixths }}>
            <dt>{label}</dt>
            <dd>{plan.fields.get(label)}</dd>
          </div>
        ))}
      </dl>
    );
  if ('columns' in part && part.columns) return <FilledTable part={part} plan={plan} />;
  return <p class="sheet-words">{'says' in part ? part.says : ''}</p>;
}

/** `#/plan`: the drought plan on one page, filled from the place, to be printed and finished with a pencil. */
export function PlanPage({ session, place, system, office }: PlaceView) {
  const results = useKept(session, resultKind, ({ placeId }) => placeId === place.id);
  const [decisionDates, setDecisionDates] = useState<Calculator | 'failed' | undefined>(undefined);
  useEffect(() => {
    definitionOf('decision-dates').then(setDecisionDates, () => setDecisionDates('failed'));
  }, []);
  if (decisionDates === 'failed') return <p role="alert">The plan could not be loaded. {loadAgain()}</p>;
  if (results === undefined || decisionDates === undefined) return null;
  const plan = planOf({ place, results, todayDay: localDay(session.now), system, decisionDates, office });
  return (
    <>
      <p class="sheet-how">
        What your place knows stands in it; the rest stays empty for a pencil. It fits one side of letter or A4.{' '}
        <a href={pageAt('../guides/writing-a-drought-plan/', location.href)}>How to write it</a>.
      </p>
      <p class="sheet-how">
        <button type="button" onClick={() => print()}>
          Print the plan
        </button>
      </p>
      {plan.missing.length > 0 && (
        <div class="sheet-how">
          <p>Could stand here, too:</p>
          <ul>
            {plan.missing.map(({ what, how, view, form }) => (
              <li key={what}>
                <a href={form === undefined ? `#/${view ?? ''}` : formAddress(form)}>{what}</a>: {how}.
              </li>
            ))}
          </ul>
        </div>
      )}
      <article class="recording-sheet plan-sheet">
        <h3>{sheet.title}</h3>
        <p class="lead">{sheet.lead}</p>
        {sheet.parts.map((part, index) => (
          <FilledPart key={String(index)} part={part} plan={plan} />
        ))}
      </article>
    </>
  );
}
