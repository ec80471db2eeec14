import { type Photo, photoVersion } from '../model/photo.ts';
import { readPhoto } from '../model/readVisit.ts';
import type { Visit } from '../model/visit.ts';

/** Pictures that came with a file, by the id of the photo. */
export type Pictures = ReadonlyMap<string, Pick<Photo, 'type' | 'data'>>;

/** A picture has no history of its own: it was drawn once and is never changed. */
const head = { rev: 1, past: ['1-photo0'], changedBy: 'a file' };

/** Photos of these visits, as records; what is no picture of one of them stays out. */
export const photosIn = (pictures: Pictures, visits: readonly Pick<Visit, 'id' | 'placeId' | 'photos' | 'changedAt'>[]): readonly Photo[] =>
  visits.flatMap(({ id: visitId, placeId, photos = [], changedAt }) =>
    photos.flatMap(({ id }) => {
      const picture = pictures.get(id);
      const read = picture && readPhoto({ ...head, changedAt, id, v: photoVersion, placeId, visitId, ...picture });
      return read?.is === 'read' ? [read.value] : [];
    }),
  );
