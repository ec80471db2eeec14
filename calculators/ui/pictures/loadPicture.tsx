import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { type Face as FacePicture, type FaceSubject, type PlainPicture, subjectOf } from '../../kit/pictures.ts';
import type { PictureProps } from './readings.ts';

export type DrawPicture = (props: PictureProps<PlainPicture>) => JSX.Element | null;

type DrawFace = (props: PictureProps<FacePicture>) => JSX.Element | null;
const faces: Readonly<Record<FaceSubject, () => Promise<{ readonly Face: DrawFace }>>> = {
  water: () => import('./face/readWater.tsx'),
  tray: () => import('./face/readTray.tsx'),
  lies: () => import('./face/readLying.tsx'),
  layers: () => import('./face/readLayers.tsx'),
  counts: () => import('./face/readCounts.tsx'),
  hard: () => import('./face/readHard.tsx'),
  ring: () => import('./face/readRing.tsx'),
  loss: () => import('./face/readLoss.tsx'),
  pond: () => import('./face/readPond.tsx'),
};

/** What draws one picture, fetched alone: each kind weighs as much as a small calculator. */
async function loadOne(one: PlainPicture): Promise<DrawPicture> {
  switch (one.kind) {
    case 'face': {
      const subject = subjectOf(one);
      if (!subject) return () => null;
      const { Face } = await faces[subject]();
      return ({ picture, ...rest }) => (picture.kind === 'face' ? <Face picture={picture} {...rest} /> : null);
    }
    case 'shares': {
      const { Shares } = await import('./Shares.tsx');
      return ({ picture, ...rest }) => (picture.kind === 'shares' ? <Shares picture={picture} {...rest} /> : null);
    }
    case 'spans': {
      const { Spans } = await import('./Spans.tsx');
      return ({ picture, ...rest }) => (picture.kind === 'spans' ? <Spans picture={picture} {...rest} /> : null);
    }
    case 'bars': {
      const { Bars } = await import('./Bars.tsx');
      return ({ picture, ...rest }) => (picture.kind === 'bars' ? <Bars picture={picture} {...rest} /> : null);
    }
    case 'strip': {
      const subject = subjectOf(one.face);
      const [{ Strip }, face] = await Promise.all([import('./Strip.tsx'), subject && faces[subject]()]);
      return ({ picture, ...rest }) => (picture.kind === 'strip' && face ? <Strip picture={picture} Face={face.Face} {...rest} /> : null);
    }
    case 'lines': {
      const [{ Lines }, markRows] = await Promise.all([import('./Lines.tsx'), one.rowMarks && import('./rowMarks.tsx')]);
      return ({ picture, ...rest }) => (picture.kind === 'lines' ? <Lines picture={picture} markRows={markRows} {...rest} /> : null);
    }
  }
}

/**
 * What draws pictures: these at once, any other as soon as it was shown.
 * @throws Error if what draws these cannot be had
 */
export async function loadPictures(pictures: readonly PlainPicture[]): Promise<DrawPicture> {
  const drawn = new Map(await Promise.all(pictures.map(async (each) => [each, await loadOne(each)] as const)));
  return function Picture(props) {
    const { picture } = props;
    const [, drawAgain] = useState(0);
    const Draw = drawn.get(picture);
    // Without signal it is asked for again with the next answer.
    useEffect(() => {
      if (Draw) return;
      loadOne(picture).then((one) => {
        drawn.set(picture, one);
        drawAgain((times) => times + 1);
      }, console.info);
    });
    return Draw ? <Draw {...props} /> : null;
  };
}
