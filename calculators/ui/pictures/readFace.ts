import type { FaceProps, Reading } from './faceReading.ts';
import { readPond } from './Pond.tsx';
import { readCounts, readHard, readLayers, readLoss, readLying, readRing } from './readGround.tsx';
import { readWater } from './readWater.tsx';

/** What a picture says of one outcome: mostly one face, and two where it sets plowed ground beside. */
export function readFace(props: FaceProps, isCompared: boolean): readonly Reading[] {
  const { water, lies, layers, counts, hard, ring, loss, pond } = props.picture;
  if (water) return [readWater(props, water)];
  if (lies) return [readLying(props, lies)];
  if (layers) return [readLayers(props, layers)];
  if (counts) return [readCounts(props, counts)];
  if (hard) return [readHard(props, hard)];
  if (ring) return [readRing(props, ring)];
  if (pond) return [readPond(props, pond)];
  return loss ? readLoss(props, loss, isCompared) : [];
}
