import type { CopyPart } from '../copyIndex.ts';
import { inflate, type PackedFile, sha256Of, splitFiles } from '../packFormat.ts';
import type { Here } from './here.ts';

/** A line that brings nothing for so long has gone dead. */
const patienceMs = 30_000;

/** Reads what comes until it is all there. A page of a network that wants a name first is stopped at, however long it is. */
async function read(response: Response, mostBytes: number, comes: () => void): Promise<Uint8Array<ArrayBuffer>> {
  const bytes = new Uint8Array(mostBytes);
  const reader = response.body?.getReader();
  let length = 0;
  for (let got = await reader?.read(); got?.value !== undefined; got = await reader?.read()) {
    comes();
    if (length + got.value.length > mostBytes) throw new Error(`more than its ${mostBytes} bytes came`);
    bytes.set(got.value, length);
    length += got.value.length;
  }
  return bytes.subarray(0, length);
}

/**
 * A part of the copy from the server, with the hash of the pack and of each file in it checked.
 * @throws Error if it does not come, stops coming, or is something else
 */
export async function fetchPart(here: Here, part: CopyPart): Promise<readonly PackedFile[]> {
  const stop = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const comes = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => stop.abort(), patienceMs);
  };
  comes();
  try {
    // What is kept in pieces need not lie in the browser's own store as well.
    const response = await here.fetch(new Request(new URL(part.file, here.folder), { cache: 'no-store', signal: stop.signal }));
    if (!response.ok) throw new Error(`${part.file}: answered ${response.status}`);
    const pack = await read(response, part.bytes, comes);
    if ((await sha256Of(pack)) !== part.sha256) throw new Error(`${part.file}: not what the list tells of`);
    const files = splitFiles(await inflate(pack));
    for (const { path, content, sha256 } of files)
      if ((await sha256Of(content)) !== sha256) throw new Error(`${part.file}: ${path} is not what the list tells of`);
    return files;
  } finally {
    clearTimeout(timer);
  }
}
