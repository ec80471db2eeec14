import type { Outcome, Said } from './define.ts';

export interface HeldCaution extends Said {
  /** Which side it holds for, where it holds for one of two. */
  readonly side: string;
}
/** What holds for either side, once each: what can cost a life first. */
export function cautionsHeld(outcome: Outcome, other: Outcome | null, titles: readonly [string, string]): readonly HeldCaution[] {
  const isIn = (side: Outcome | null, lead: string): boolean => side?.cautions.some((each) => each.lead === lead) === true;
  const all = [...new Map([...outcome.cautions, ...(other?.cautions ?? [])].map((each) => [each.lead, each])).values()];
  const held = all.map((each): HeldCaution => {
    const [here, there] = [isIn(outcome, each.lead), isIn(other, each.lead)];
    return { ...each, side: other === null || (here && there) ? '' : here ? titles[0] : titles[1] };
  });
  return [...held.filter(({ life }) => life), ...held.filter(({ life }) => !life)];
}
