export type FileText = { readonly text: string } | { readonly problem: string };

/** A packed spreadsheet or an old one: both begin with marks of their own. */
export const isSpreadsheet = ([first, second]: Uint8Array): boolean => (first === 0x50 && second === 0x4b) || (first === 0xd0 && second === 0xcf);
/** How a text writes its letters, by the mark at its beginning. */
export function encodingOf([first, second]: Uint8Array): 'utf-8' | 'utf-16le' | 'utf-16be' {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
}

/** The text of a file that somebody chose, whatever program wrote it. */
export async function textOfFile(file: File): Promise<FileText> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (isSpreadsheet(bytes)) return { problem: `“${file.name}” is a spreadsheet. Save its sheet as CSV and read that.` };
  const text = new TextDecoder(encodingOf(bytes)).decode(bytes);
  if (text.includes('\0')) return { problem: `“${file.name}” is no text. A record is a text file, such as CSV.` };
  return text.trim() === '' ? { problem: `“${file.name}” is empty.` } : { text };
}
