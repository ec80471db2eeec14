import { noteMigrations } from './migrations/note.ts';
import { resultMigrations } from './migrations/result.ts';
import { visitMigrations } from './migrations/visit.ts';
import { type Note, noteSchema, noteVersion } from './note.ts';
import { type Photo, photoSchema, photoVersion } from './photo.ts';
import { type Read, readAs } from './readRecord.ts';
import { type Result, resultSchema, resultVersion } from './result.ts';
import { type Visit, visitSchema, visitVersion } from './visit.ts';

const shapeOf = (what: string): string => `It does not have the shape of ${what}.`;

/** What belongs to visits, as any edition wrote it. */
export const readVisit = (raw: unknown): Read<Visit> =>
  readAs({ schema: visitSchema, migrations: visitMigrations, version: visitVersion, otherwise: shapeOf('a visit') }, raw);
export const readResult = (raw: unknown): Read<Result> =>
  readAs({ schema: resultSchema, migrations: resultMigrations, version: resultVersion, otherwise: shapeOf('a kept calculation') }, raw);
export const readNote = (raw: unknown): Read<Note> =>
  readAs({ schema: noteSchema, migrations: noteMigrations, version: noteVersion, otherwise: shapeOf('a follow-up note') }, raw);
export const readPhoto = (raw: unknown): Read<Photo> =>
  readAs({ schema: photoSchema, migrations: {}, version: photoVersion, otherwise: shapeOf('a photo') }, raw);
