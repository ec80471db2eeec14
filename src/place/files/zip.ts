import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { type Photo, photoTypes } from '../model/photo.ts';
import type { Pictures } from './pictures.ts';

/** What a zip may hold, unpacked. */
const mostUnpackedBytes = 200 * 1024 * 1024;
const mostEntries = 2000;
const fileName = 'place.json';
const endings: Readonly<Record<Photo['type'], string>> = { 'image/webp': 'webp', 'image/jpeg': 'jpg' };
/** Nothing but these two kinds of name: no other folder, no way out of it. */
const photoName = /^photos\/([a-z0-9][a-z0-9-]{0,63})\.(webp|jpg)$/;

const bytesOf = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** The text of a file of places, with the photos of their visits around it. Pictures are small already: they are stored as they are. */
export function zipOf(text: string, photos: readonly Photo[]): Uint8Array<ArrayBuffer> {
  const entries = photos.map(({ id, type, data }) => [`photos/${id}.${endings[type]}`, [bytesOf(data), { level: 0 }]] as const);
  return zipSync({ [fileName]: strToU8(text), ...Object.fromEntries(entries) }, { mtime: '1980-01-02' });
}

export type ZipRead = { readonly is: 'refused'; readonly say: string } | { readonly is: 'read'; readonly text: string; readonly pictures: Pictures };
const refused = (say: string): ZipRead => ({ is: 'refused', say });

/** Opens a zip, looking at sizes and names before anything is unpacked. */
export function readZip(bytes: Uint8Array): ZipRead {
  let [count, unpacked, isOdd] = [0, 0, false];
  try {
    const found = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        count += 1;
        unpacked += originalSize;
        isOdd ||= name !== fileName && !photoName.test(name);
        return count <= mostEntries && unpacked <= mostUnpackedBytes && !isOdd;
      },
    });
    if (count > mostEntries || unpacked > mostUnpackedBytes) return refused('This file holds more than any place can. It was not opened.');
    const file = found[fileName];
    if (isOdd || file === undefined) return refused('This is not a file of a place: other things are in it. It was not opened.');
    const pictures = Object.entries(found).flatMap(([name, picture]): (readonly [string, Pick<Photo, 'type' | 'data'>])[] => {
      const [, id, ending] = photoName.exec(name) ?? [];
      const type = photoTypes.find((each) => endings[each] === ending);
      return id === undefined || type === undefined ? [] : [[id, { type, data: base64Of(picture) }]];
    });
    return { is: 'read', text: strFromU8(file), pictures: new Map(pictures) };
  } catch {
    return refused('This zip cannot be opened: it is damaged, or no zip.');
  }
}
