/** For each word what it leads to: the number of a line, and a mark from 0 to `highestMark`. */
export type Lists = ReadonlyMap<string, readonly (readonly [number, number])[]>;

/** Lists as three texts with a row for each word. Like stands by like, so that they travel as half of what they would otherwise. */
export interface Packed {
  readonly words: string;
  /** Each line as the steps from the one before it. */
  readonly lines: string;
  /** Each mark as one letter. */
  readonly marks: string;
}

const base = 36;
export const highestMark = base - 1;

/** @throws RangeError if a mark does not fit into a letter, or lines do not rise */
export function pack(lists: Lists): Packed {
  const rows = [...lists].sort(([one], [other]) => (one < other ? -1 : 1));
  const steps = rows.map(([word, list]) =>
    list.map(([line, mark], at) => {
      const step = line - (list[at - 1]?.[0] ?? 0);
      if (step < 0 || mark < 0 || mark > highestMark) throw new RangeError(`search index: “${word}” has line ${line} with mark ${mark}`);
      return step;
    }),
  );
  return {
    words: rows.map(([word]) => word).join('\n'),
    lines: steps.map((row) => row.join(' ')).join('\n'),
    marks: rows.map(([, list]) => list.map(([, mark]) => mark.toString(base)).join('')).join('\n'),
  };
}

/** Lists that are read out of the texts one by one, as they are asked for: a question has a handful of words, the index thousands. */
export interface Unpacked extends Pick<Lists, 'get' | 'has'> {
  readonly words: readonly string[];
}
export function unpack(packed: Packed): Unpacked {
  const words = packed.words.split('\n');
  const lines = packed.lines.split('\n');
  const marks = packed.marks.split('\n');
  const rows = new Map(words.map((word, row) => [word, row]));
  const listOf = (row: number): readonly (readonly [number, number])[] => {
    const rowMarks = marks[row] ?? '';
    let line = 0;
    return (lines[row] ?? '').split(' ').map((step, at) => {
      line += Number(step);
      return [line, Number.parseInt(rowMarks.charAt(at), base)] as const;
    });
  };
  return {
    words,
    has: (word) => rows.has(word),
    get: (word) => {
      const row = rows.get(word);
      return row === undefined ? undefined : listOf(row);
    },
  };
}
