import type { JSX } from 'preact';
import type { PlainPicture } from '../../kit/pictures.ts';
import type { PictureProps } from './readings.ts';

export type DrawPicture = (props: PictureProps<PlainPicture>) => JSX.Element | null;

/** What draws one kind of picture, fetched alone: a calculator has one picture, and each kind weighs as much as a small calculator. */
export async function loadPicture(kind: PlainPicture['kind']): Promise<DrawPicture> {
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
