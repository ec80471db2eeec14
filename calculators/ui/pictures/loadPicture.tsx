import type { JSX } from 'preact';
import type { PlainPicture } from '../../kit/pictures.ts';
import type { PictureProps } from './readings.ts';

export type DrawPicture = (props: PictureProps<PlainPicture>) => JSX.Element | null;

/** What draws one kind of picture, fetched alone: each kind weighs as much as a small calculator. */
async function loadKind(kind: PlainPicture['kind']): Promise<DrawPicture> {
  switch (kind) {
    case 'face': {
      const { Face } = await import('./Face.tsx');
      return ({ picture, ...rest }) => (picture.kind === kind ? <Face picture={picture} {...rest} /> : null);
    }
    case 'shares': {
      const { Shares } = await import('./Shares.tsx');
      return ({ picture, ...rest }) => (picture.kind === kind ? <Shares picture={picture} {...rest} /> : null);
    }
    case 'spans': {
      const { Spans } = await import('./Spans.tsx');
      return ({ picture, ...rest }) => (picture.kind === kind ? <Spans picture={picture} {...rest} /> : null);
    }
    case 'lines': {
      const { Lines } = await import('./Lines.tsx');
      return ({ picture, ...rest }) => (picture.kind === kind ? <Lines picture={picture} {...rest} /> : null);
    }
  }
}

/** What draws the pictures of one calculator, and no other kind. */
export async function loadPicture({
  picture,
  morePictures,
}: {
  readonly picture: PlainPicture | undefined;
  readonly morePictures: readonly PlainPicture[];
}): Promise<DrawPicture> {
  const kinds = [...new Set([...(picture ? [picture] : []), ...morePictures].map(({ kind }) => kind))];
  const drawn = new Map(await Promise.all(kinds.map(async (kind) => [kind, await loadKind(kind)] as const)));
  return (props) => {
    const Draw = drawn.get(props.picture.kind);
    return Draw ? <Draw {...props} /> : null;
  };
}
