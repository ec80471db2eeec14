import type { JSX } from 'preact';
import type { Face, FaceSubject } from '../../../kit/pictures.ts';
import type { PictureProps } from '../readings.ts';
import { Face as counts } from './readCounts.tsx';
import { Face as hard } from './readHard.tsx';
import { Face as layers } from './readLayers.tsx';
import { Face as loss } from './readLoss.tsx';
import { Face as lies } from './readLying.tsx';
import { Face as pond } from './readPond.tsx';
import { Face as ring } from './readRing.tsx';
import { Face as tray } from './readTray.tsx';
import { Face as water } from './readWater.tsx';

type Draw = (props: PictureProps<Face>) => JSX.Element | null;
/** All of them, for a page that is built. */
export const faces: Readonly<Record<FaceSubject, Draw>> = { water, tray, lies, layers, counts, hard, ring, loss, pond };
