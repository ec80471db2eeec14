import type { Photo } from '../model/photo.ts';
import { photoTypes } from '../model/photo.ts';

const longestSidePx = 1600;
const quality = 0.8;

const isKnown = (type: string): type is Photo['type'] => photoTypes.some((each) => each === type);
async function asBase64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
/**
 * A picture drawn anew on a canvas, at most 1,600 px: of the file only what can be seen is left.
 * @throws Error where the browser cannot read it as a picture
 */
export async function redraw(file: Blob): Promise<Pick<Photo, 'type' | 'data'>> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, longestSidePx / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const drawn = (type: string): Promise<Blob | null> => new Promise((done) => canvas.toBlob(done, type, quality));
  // A browser that writes no WebP gives another kind in its place.
  const first = await drawn('image/webp');
  const blob = first?.type === 'image/webp' ? first : await drawn('image/jpeg');
  if (blob === null || !isKnown(blob.type)) throw new Error('no picture could be drawn');
  return { type: blob.type, data: await asBase64(blob) };
}
