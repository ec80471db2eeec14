const negative = /^-\d+(?:\.\d+)?(?:e[-+]?\d+)?$/;

/** A cell that no spreadsheet takes for a formula: what begins like one gets an apostrophe in front. A negative number stays a number. */
export const spreadsheetCell = (text: string): string => (/^\s*[=+@-]|^[\t\r]/.test(text) && !negative.test(text) ? `'${text}` : text);
