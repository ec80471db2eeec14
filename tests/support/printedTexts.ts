import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface Text {
  readonly text: string;
  readonly sizePt: number;
}
/** Letters that are drawn in one go, with the place that they take in points. */
export interface Letters {
  readonly text: string;
  readonly box: readonly [left: number, bottom: number, right: number, top: number];
}
export interface PrintedPage {
  readonly texts: readonly Text[];
  readonly letters: readonly Letters[];
}

type Matrix = readonly [number, number, number, number, number, number];
const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  ...([a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j] as const),
  ...([a * k + c * l + e, b * k + d * l + f] as const),
];
const unmoved: Matrix = [1, 0, 0, 1, 0, 0];
function matrixOf(given: unknown): Matrix {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = ArrayBuffer.isView(given) || Array.isArray(given) ? Array.from(given as ArrayLike<number>) : [];
  return [a, b, c, d, e, f];
}
const heightShare = 0.6;

/**
 * The letters of a page where they really stand. The texts that pdf.js puts together reach over what another font draws in between, as a bracket in a formula,
 * so their boxes cannot be compared.
 */
function lettersOf(operators: { readonly fnArray: readonly number[]; readonly argsArray: readonly unknown[] }): readonly Letters[] {
  let [page, line, size] = [unmoved, unmoved, 0];
  const kept: Matrix[] = [];
  return operators.fnArray.flatMap((operator, at): readonly Letters[] => {
    const given = operators.argsArray[at];
    const args: readonly unknown[] = Array.isArray(given) ? given : [];
    if (operator === OPS.save) kept.push(page);
    else if (operator === OPS.restore) page = kept.pop() ?? unmoved;
    else if (operator === OPS.transform) page = times(page, matrixOf(args));
    else if (operator === OPS.beginText) line = unmoved;
    else if (operator === OPS.setFont) size = Number(args[1]);
    else if (operator === OPS.setTextMatrix) line = matrixOf(args[0]);
    else if (operator === OPS.moveText) line = times(line, [1, 0, 0, 1, Number(args[0]), Number(args[1])]);
    else if (operator === OPS.showText) {
      const glyphs: readonly (number | { readonly unicode: string; readonly width: number })[] = Array.isArray(args[0]) ? args[0] : [];
      const text = glyphs.map((each) => (typeof each === 'number' ? '' : each.unicode)).join('');
      if (text.trim() === '') return [];
      const wide = glyphs.reduce<number>((sum, each) => sum + ((typeof each === 'number' ? -each : each.width) * size) / 1000, 0);
      const place = times(page, line);
      const [, , , , left, bottom] = place;
      const [, , , , right, top] = times(place, [1, 0, 0, 1, wide, heightShare * size]);
      return [{ text, box: [Math.min(left, right), Math.min(bottom, top), Math.max(left, right), Math.max(bottom, top)] }];
    }
    return [];
  });
}

/** The pages of a PDF. */
export async function readPdf(data: Uint8Array): Promise<readonly PrintedPage[]> {
  const document = await getDocument({ data, verbosity: 0 }).promise;
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item): Text[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , c, d]: number[] = item.transform;
      return [{ text: item.str, sizePt: Math.hypot(c ?? 0, d ?? 0) }];
    });
    pages.push({ texts, letters: lettersOf(await page.getOperatorList()) });
  }
  return pages;
}

/** What lies over each other. A text with a halo is drawn twice in one place, and letters of one line move together, as a comma under a y. */
export function overlapsOf(letters: readonly Letters[]): readonly string[] {
  const slackPt = 1.5;
  const kernedShare = 0.25;
  const isTwice = (one: Letters, two: Letters): boolean =>
    one.text === two.text && one.box.every((side, at) => Math.abs(side - (two.box[at] ?? 0)) < 0.5);
  return letters.flatMap((one, index) =>
    letters
      .slice(index + 1)
      .filter((two) => {
        const across = Math.min(one.box[2], two.box[2]) - Math.max(one.box[0], two.box[0]);
        const down = Math.min(one.box[3], two.box[3]) - Math.max(one.box[1], two.box[1]);
        const isOneLine = Math.abs(one.box[1] - two.box[1]) < 0.1;
        const sizePt = Math.min(...[one, two].map(({ box }) => box[3] - box[1])) / heightShare;
        return across > (isOneLine ? Math.max(slackPt, kernedShare * sizePt) : slackPt) && down > slackPt && !isTwice(one, two);
      })
      .map((two) => `“${one.text}” and “${two.text}”`),
  );
}
