import { shortHelpText } from '../kit/helpLines.ts';

/** Whom to call, for paper and notes: an office's own lines stand before the national ones. */
export const helpText = (officeLines: string | undefined): string =>
  officeLines === undefined ? shortHelpText : `${officeLines.replaceAll('\n', ' ')} ${shortHelpText}`;
