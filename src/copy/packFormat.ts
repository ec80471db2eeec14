// A pack, before it is compressed (zlib, RFC 1950): how long its list is, as four bytes, the highest first; the list, as JSON; the files of the list, one after the other.

export interface Listed {
  /** From the folder of the worker; a page by its address: `guides/x/`, and `` for the first one. */
  readonly path: string;
  readonly type: string;
  readonly sha256: string;
  readonly length: number;
}
export interface PackedFile extends Listed {
  readonly content: Uint8Array<ArrayBuffer>;
}

const lengthBytes = 4;

export function joinFiles(files: readonly PackedFile[]): Uint8Array<ArrayBuffer> {
  const list = new TextEncoder().encode(JSON.stringify(files.map(({ path, type, sha256, length }) => ({ path, type, sha256, length }))));
  const pack = new Uint8Array(lengthBytes + list.length + files.reduce((sum, { length }) => sum + length, 0));
  new DataView(pack.buffer).setUint32(0, list.length);
  pack.set(list, lengthBytes);
  let at = lengthBytes + list.length;
  for (const { content, length } of files) {
    pack.set(content, at);
    at += length;
  }
  return pack;
}

/** @throws Error if these bytes are no pack, or not all of one */
export function splitFiles(pack: Uint8Array<ArrayBuffer>): readonly PackedFile[] {
  if (pack.length < lengthBytes) throw new Error('This pack is cut short.');
  const end = lengthBytes + new DataView(pack.buffer, pack.byteOffset).getUint32(0);
  const list: readonly Listed[] = JSON.parse(new TextDecoder().decode(pack.subarray(lengthBytes, end)));
  let at = end;
  const files = list.map((listed) => {
    const content = pack.subarray(at, at + listed.length);
    at += listed.length;
    return { ...listed, content };
  });
  if (at !== pack.length) throw new Error(`This pack has ${pack.length} bytes; its list tells of ${at}.`);
  return files;
}

export async function inflate(compressed: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([compressed]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

export async function sha256Of(content: Uint8Array<ArrayBuffer>): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
  return Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
