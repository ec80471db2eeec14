// A range whose ends read the same tells nothing, and looks like a fault: `26,700 lb to 26,700 lb`. One that says its unit twice is longer than it need be: `33 days to 51 days`.

const amount = String.raw`−?\$?\d[\d,.]*(?: [%\w/]+){0,3}?`;
const inBrackets = new RegExp(String.raw` \((${amount}) to \1(?: [^()]*)?\)`, 'g');
const inText = new RegExp(String.raw`(?<![\d.,])(${amount}) to \1(?![\d,.]*\d)`, 'g');

const number = String.raw`−?\$?\d(?:[\d,.]*\d)?`;
/** Up to three words behind a number, the same behind the second one; a single day stands before many days. */
const unit = String.raw`(?: [%°a-zA-Z][\w/³²°]*){1,3}?`;
const twice = new RegExp(String.raw`(?<![\d.,])(${number})(${unit})s? to (${number})(\2s?)(?![\w/³²°])`, 'g');

/** A text without them: in brackets behind a number they go, elsewhere one end stays. */
export const withoutHollowRanges = (text: string): string => text.replace(inBrackets, '').replace(inText, '$1');
/** `33 to 51 days`, `$209 to $321 a ton`. */
export const withUnitOnce = (text: string): string => text.replace(twice, '$1 to $3$4');
