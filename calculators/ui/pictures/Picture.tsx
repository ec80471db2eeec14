import type { PlainPicture } from '../../kit/pictures.ts';
import type { PictureProps } from './readings.ts';
import { SoilFace } from './SoilFace.tsx';

/** Draws any definition's picture. */
export function Picture({ picture, ...rest }: PictureProps<PlainPicture>) {
  switch (picture.kind) {
    case 'soilFace':
      return <SoilFace picture={picture} {...rest} />;
    default:
      return null;
  }
}
