// A range whose ends read the same tells nothing, and looks like a fault: `26,700 lb to 26,700 lb`.

const amount = String.raw`−?\$?\d[\d,.]*(?: [%\w/]+){0,3}?`;
const inBrackets = new RegExp(String.raw` \((${amount}) to \1(?: [^()]*)?\)`, 'g');
const inText = new RegExp(String.raw`(?<![\d.,])(${amount}) to \1(?![\d,.]*\d)`, 'g');

/** A text without them: in brackets behind a number they go, elsewhere one end stays. */
export const withoutHollowRanges = (text: string): string => text.replace(inBrackets, '').replace(inText, '$1');
