/** What stands where in a text: the value, and the line of each of its places. */
export type JsonRead =
  | { readonly is: 'read'; readonly value: unknown; readonly lineOf: (path: string) => number }
  | { readonly is: 'wrong'; readonly line: number; readonly letter: number; readonly say: string };

class Fault extends Error {
  readonly at: number;
  constructor(at: number, say: string) {
    super(say);
    this.at = at;
  }
}
const shown = (text: string, at: number): string => {
  const line = text.slice(at, at + 24).split('\n', 1)[0];
  return line === undefined || line === '' ? 'the end of the line' : `“${line}”`;
};

/** Goes through a text once, by the grammar of JSON (RFC 8259), and keeps where each value begins. */
class Scanner {
  readonly starts = new Map<string, number>();
  private at = 0;
  private readonly text: string;
  private readonly deepest: number;
  constructor(text: string, deepest: number) {
    this.text = text;
    this.deepest = deepest;
  }
  scan(): void {
    this.value('', 1);
    this.space();
    if (this.at < this.text.length) throw new Fault(this.at, `after the end of the values stands more: ${shown(this.text, this.at)}`);
  }
  private space(): void {
    while (/[ \t\r\n]/.test(this.text[this.at] ?? '')) this.at++;
  }
  private next(): string {
    this.space();
    return this.text[this.at] ?? '';
  }
  private value(path: string, depth: number): void {
    const begins = this.next();
    this.starts.set(path, this.at);
    if (depth > this.deepest) throw new Fault(this.at, 'values stand deeper in each other than in any office file');
    if (begins === '{') this.list('}', (index) => this.member(path, depth, index));
    else if (begins === '[') this.list(']', (index) => this.value(join(path, String(index)), depth + 1));
    else if (begins === '"') this.words();
    else this.word();
  }
  private member(path: string, depth: number, index: number): void {
    if (this.next() !== '"')
      throw new Fault(this.at, `a name in quotes should stand here${index > 0 ? ', or there is a comma too many before it' : ''}`);
    const key = this.words();
    if (this.next() !== ':') throw new Fault(this.at, 'a colon is missing');
    this.at++;
    this.value(join(path, key), depth + 1);
  }
  private list(end: string, each: (index: number) => void): void {
    this.at++;
    if (this.next() === end) {
      this.at++;
      return;
    }
    for (let index = 0; ; index++) {
      each(index);
      const found = this.next();
      if (found !== ',' && found !== end)
        throw new Fault(this.at, found === '' ? `a ${end} is missing at the end` : 'a comma is missing before this');
      this.at++;
      if (found === end) return;
    }
  }
  private words(): string {
    const from = this.at;
    const found = /"[^"\\\n\r]*(?:\\.[^"\\\n\r]*)*"/y;
    found.lastIndex = from;
    const [whole] = found.exec(this.text) ?? [];
    this.at += whole?.length ?? 0;
    try {
      return JSON.parse(whole ?? '');
    } catch {
      throw new Fault(from, `words in quotes are not closed, or hold a letter that they cannot: ${shown(this.text, from)}`);
    }
  }
  private word(): void {
    const found = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;
    found.lastIndex = this.at;
    const [whole] = found.exec(this.text) ?? [];
    if (whole === undefined) throw new Fault(this.at, `a value should stand here; this is ${shown(this.text, this.at)}`);
    this.at += whole.length;
  }
}
const join = (path: string, step: string): string => (path === '' ? step : `${path}.${step}`);

/** Reads a text that begins on a line of a file. Nothing in it is ever run. */
export function readJson(text: string, firstLine: number, deepest: number): JsonRead {
  const scanner = new Scanner(text, deepest);
  const lineAt = (at: number): number => firstLine + (text.slice(0, at).match(/\n/g)?.length ?? 0);
  try {
    scanner.scan();
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    return { is: 'wrong', line: lineAt(fault.at), letter: fault.at - text.lastIndexOf('\n', fault.at - 1), say: fault.message };
  }
  const lineOf = (path: string): number => {
    const start = scanner.starts.get(path);
    if (start !== undefined) return lineAt(start);
    // What is missing is told by the line of what it is missing in.
    return path === '' ? firstLine : lineOf(path.includes('.') ? path.slice(0, path.lastIndexOf('.')) : '');
  };
  return { is: 'read', value: JSON.parse(text), lineOf };
}
