import type { Note } from '../model/note.ts';
import type { Photo } from '../model/photo.ts';
import { readNote, readPhoto, readResult, readVisit } from '../model/readVisit.ts';
import type { Result } from '../model/result.ts';
import type { Visit } from '../model/visit.ts';
import type { Kind } from './kind.ts';

/** Visits and what belongs to them. Apart from the others, so that only what needs them fetches their schemas. */
export const visitKind: Kind<Visit> = { store: 'visits', read: readVisit };
export const resultKind: Kind<Result> = { store: 'results', read: readResult };
export const noteKind: Kind<Note> = { store: 'notes', read: readNote };
export const photoKind: Kind<Photo> = { store: 'photos', read: readPhoto };
