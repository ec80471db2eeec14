import type { Answers } from './answers.ts';
import type { ReadCell } from './assemble.ts';
import type { Layout, Table } from './columns.ts';
import { longestRead } from './limits.ts';
import { counted } from './linesSaid.ts';
import { nothingSaid, type Said } from './said.ts';

/** How a column counts a day's warmth. */
const scales = {
  f: { label: '°F', toF: (read: number) => read },
  c: { label: '°C', toF: (read: number) => read * 1.8 + 32 },
  'tenths-c': { label: 'Tenths of °C', toF: (read: number) => read * 0.18 + 32 },
} as const;
type Scale = keyof typeof scales;
const isScale = (text: string | undefined): text is Scale => text !== undefined && Object.hasOwn(scales, text);

/** No air is colder or hotter than these, °F: what is past them is a code for a day that was not read. */
const [coldestF, hottestF] = [-90, 135];
/** A year of days in °F goes past this, one in °C cannot: it is more than any air has had. */
const mostC = 57;

/** The unit that a column's head names. */
function scaleIn(head: string): Scale | undefined {
  const words = head.replace(/([a-z])([A-Z])/g, '$1 $2').replaceAll('_', ' ');
  const isC = /\bC\b|celsius|centigrade/i.test(words);
  if (/tenth/i.test(words)) return 'tenths-c';
  if (isC) return 'c';
  return /\bF\b|fahrenheit/i.test(words) ? 'f' : undefined;
}

function numberIn(cell: string, hasDecimalComma: boolean): number | undefined {
  const text = cell.trim().slice(0, longestRead).replace('−', '-');
  const plain = hasDecimalComma ? text.replace(',', '.') : text;
  return /^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : undefined;
}

export interface Warmth {
  readonly highF?: number;
  readonly lowF?: number;
}
interface Warm extends Said {
  readonly byDay: ReadonlyMap<number, Warmth>;
}
/** Highs and lows of the days, where a line above them names their columns. A high below its low is believed neither way. */
export function temperaturesIn(rows: Table, { head, high, low }: Layout, cells: readonly ReadCell[], cutAt: string, answers: Answers): Warm {
  const byDay = new Map<number, Warmth>();
  if (high === undefined || low === undefined) return { ...nothingSaid, byDay };
  const raw = cells.flatMap(({ line, day, days }) => {
    const row = rows[line - 1] ?? [];
    return day === undefined || days > 1
      ? []
      : [{ day, high: numberIn(row[high] ?? '', cutAt !== ','), low: numberIn(row[low] ?? '', cutAt !== ',') }];
  });
  const asked = answers['warmth'];
  const named = scaleIn(head[high] ?? '') ?? scaleIn(head[low] ?? '');
  // One slip of the pen is no sign.
  const past = (most: number): boolean =>
    raw.filter((each) => each.high !== undefined && each.high > most && each.high < 999).length > 0.01 * raw.length;
  const guessed: Scale = past(hottestF) ? 'tenths-c' : past(mostC) ? 'f' : 'c';
  const scale = isScale(asked) ? asked : (named ?? guessed);
  const inF = (read: number | undefined): number | undefined => {
    const is = read === undefined ? undefined : scales[scale].toF(read);
    return is !== undefined && is >= coldestF && is <= hottestF ? is : undefined;
  };
  let [lacking, crossed] = [0, 0];
  for (const each of raw) {
    const [highF, lowF] = [inF(each.high), inF(each.low)];
    if (highF === undefined || lowF === undefined) lacking += 1;
    if (highF !== undefined && lowF !== undefined && highF < lowF) {
      crossed += 1;
      continue;
    }
    byDay.set(each.day, { ...(highF === undefined ? {} : { highF }), ...(lowF === undefined ? {} : { lowF }) });
  }
  const options = Object.entries(scales).map(([value, { label }]) => ({ value, label }));
  const columns = `“${head[high]?.slice(0, 30)}” and “${head[low]?.slice(0, 30)}”`;
  return {
    byDay,
    questions: [{ name: 'warmth', ask: 'Its temperatures are in', options, answer: scale }],
    told: [
      `Highs and lows come from ${columns}, taken as ${scales[scale].label}${named === undefined && asked === undefined ? ', by how large they are' : ''}.`,
      ...(lacking > 0 ? [`Without a high or a low: ${counted(lacking, 'day')}.`] : []),
      ...(crossed > 0 ? [`The high lies below the low, so neither is used: ${counted(crossed, 'day')}.`] : []),
    ],
    problem: undefined,
  };
}
