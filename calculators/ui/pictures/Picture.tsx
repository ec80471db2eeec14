import type { PlainPicture } from '../../kit/pictures.ts';
import { Bars } from './Bars.tsx';
import { GroundProfile } from './GroundProfile.tsx';
import { Lines } from './Lines.tsx';
import type { PictureProps } from './readings.ts';
import { Shares } from './Shares.tsx';
import { SoilFace } from './SoilFace.tsx';
import { Spans } from './Spans.tsx';

/** Draws any definition's picture. */
export function Picture({ picture, ...rest }: PictureProps<PlainPicture>) {
  switch (picture.kind) {
    case 'soilFace':
      return <SoilFace picture={picture} {...rest} />;
    case 'groundProfile':
      return <GroundProfile picture={picture} {...rest} />;
    case 'shares':
      return <Shares picture={picture} {...rest} />;
    case 'spans':
      return <Spans picture={picture} {...rest} />;
    case 'bars':
      return <Bars picture={picture} {...rest} />;
    case 'lines':
      return <Lines picture={picture} {...rest} />;
  }
}
