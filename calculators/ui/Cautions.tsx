import { cautionsHeld, type HeldCaution } from '../kit/cautionsHeld.ts';
import type { Outcome } from '../kit/define.ts';

const Lead = ({ caution: { side, lead } }: { readonly caution: HeldCaution }) => (
  <>
    {side !== '' && <b class="bar-side">{side}: </b>}
    {lead}
  </>
);

/** Above the answer: every lead that is about life, else the first; what they mean, and the others, open in place. */
export function Cautions({
  outcome,
  other,
  titles,
}: {
  readonly outcome: Outcome | null;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
}) {
  const held = outcome ? cautionsHeld(outcome, other, titles) : [];
  const [first] = held;
  if (first === undefined) return null;
  const open = first.life ? held.filter(({ life }) => life) : [first];
  const folded = held.length - open.length;
  return (
    <details class="bar">
      <summary>
        {open.map((caution) => (
          <span class="bar-lead" key={caution.lead}>
            <Lead caution={caution} />
          </span>
        ))}
        <span class="bar-why">why{folded > 0 && `, and ${folded} more ${folded === 1 ? 'caution' : 'cautions'}`}</span>
      </summary>
      {held.map((caution) => (
        <div class="bar-says" key={caution.lead}>
          {!open.includes(caution) && (
            <p class="bar-lead">
              <Lead caution={caution} />
            </p>
          )}
          <p>{caution.say}</p>
        </div>
      ))}
    </details>
  );
}
