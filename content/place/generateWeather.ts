/** Writes the demo place's weather anew: `npm run place`. */
import { writeFileSync } from 'node:fs';
import * as v from 'valibot';
import { weatherCsv, weatherRecord } from './weatherRecord.ts';
import { weatherSettingsSchema } from './weatherSchema.ts';
import settings from './weatherSettings.json' with { type: 'json' };

const record = weatherRecord(v.parse(weatherSettingsSchema, settings));
writeFileSync(new URL('weather.csv', import.meta.url), weatherCsv(record));
process.stdout.write(`weather.csv: ${record.length} days, ${record[0]?.day} to ${record.at(-1)?.day}\n`);
