import { calendarFile } from '../../calculators/ui/calendarFile.ts';
import { asMarkdown } from '../../src/place/visit/asMarkdown.ts';
import { asText } from '../../src/place/visit/asText.ts';
import { type Audience, outgoing } from '../../src/place/visit/audience.ts';
import type { Facts } from '../../src/place/visit/blocks.ts';
import { calendarDays } from '../../src/place/visit/calendarDays.ts';

/** The calendar file of a note. */
export const calendar = (of: Facts, audience: Audience, today = '2026-06-20'): string =>
  calendarFile('visit-v1', calendarDays(of, audience, outgoing(of, audience), today));
/** Every text that goes out with a note. */
export const outputs = (of: Facts, audience: Audience): readonly string[] => {
  const note = outgoing(of, audience);
  // A calendar line is folded; a name may stand across the fold.
  return [
    asText(note),
    asMarkdown(note),
    calendar(of, audience).replaceAll(/\r?\n[ \t]/g, ''),
    note.fileWord,
    note.title,
    note.told.has,
    note.told.leavesOut,
  ];
};
