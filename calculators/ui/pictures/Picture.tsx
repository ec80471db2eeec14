import { type PlainPicture, subjectOf } from '../../kit/pictures.ts';
import { Bars } from './Bars.tsx';
import { faces } from './face/faces.ts';
import { Lines } from './Lines.tsx';
import type { PictureProps } from './readings.ts';
import * as markRows from './rowMarks.tsx';
import { Shares } from './Shares.tsx';
import { Spans } from './Spans.tsx';
import { Strip } from './Strip.tsx';

/** Draws any definition's picture. */
export function Picture({ picture, ...rest }: PictureProps<PlainPicture>) {
  switch (picture.kind) {
    case 'face': {
      const subject = subjectOf(picture);
      if (!subject) return null;
      const Face = faces[subject];
      return <Face picture={picture} {...rest} />;
    }
    case 'shares':
      return <Shares picture={picture} {...rest} />;
    case 'spans':
      return <Spans picture={picture} {...rest} />;
    case 'bars':
      return <Bars picture={picture} {...rest} />;
    case 'strip': {
      const subject = subjectOf(picture.face);
      return subject ? <Strip picture={picture} Face={faces[subject]} {...rest} /> : null;
    }
    case 'lines':
      return <Lines markRows={markRows} picture={picture} {...rest} />;
  }
}
