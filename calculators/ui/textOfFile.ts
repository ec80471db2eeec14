export type FileText = { readonly text: string } | { readonly problem: string };

/** The text of a file that somebody chose, whatever program wrote it. */
export async function textOfFile(file: File): Promise<FileText> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const [first, second] = bytes;
  // A packed spreadsheet or an old one: both begin with marks of their own.
  if ((first === 0x50 && second === 0x4b) || (first === 0xd0 && second === 0xcf))
    return { problem: `“${file.name}” is a spreadsheet. Save its sheet as CSV and read that.` };
  const isWide = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
  const text = new TextDecoder(isWide ? (first === 0xff ? 'utf-16le' : 'utf-16be') : 'utf-8').decode(bytes);
  if (text.includes('\0')) return { problem: `“${file.name}” is no text. A record is a text file, such as CSV.` };
  return text.trim() === '' ? { problem: `“${file.name}” is empty.` } : { text };
}
