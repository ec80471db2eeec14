import type { Outcome, Said } from '../kit/define.ts';

interface Held extends Said {
  /** Which side it holds for, where it holds for one of two. */
  readonly side: string;
}
/** What holds for either side, once each: what can cost a life first. */
export function cautionsHeld(outcome: Outcome, other: Outcome | null, titles: readonly [string, string]): readonly Held[] {
  const isIn = (side: Outcome | null, lead: string): boolean => side?.cautions.some((each) => each.lead === lead) === true;
  const all = [...new Map([...outcome.cautions, ...(other?.cautions ?? [])].map((each) => [each.lead, each])).values()];
  const held = all.map((each): Held => {
    const [here, there] = [isIn(outcome, each.lead), isIn(other, each.lead)];
    return { ...each, side: other === null || (here && there) ? '' : here ? titles[0] : titles[1] };
  });
  return [...held.filter(({ life }) => life), ...held.filter(({ life }) => !life)];
}

const Lead = ({ caution: { side, lead } }: { readonly caution: Held }) => (
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
