import * as v from 'valibot';
import examplesData from './examples.json' with { type: 'json' };
import placeData from './place.json' with { type: 'json' };
import { examplesSchema, placeSchema } from './schema.ts';

/** The demo place, checked against its schema. */
export const place = v.parse(placeSchema, placeData);

/** Worked examples about the place, by name. */
export const examples = v.parse(examplesSchema, examplesData);
