/**
 * What to do as stored hay heats, by its temperature, degrees Fahrenheit. Sources differ, and a row for each is kept: where two speak of one
 * temperature, go by the one that acts or calls for help first.
 */
export interface HayHeat {
  readonly heat: string;
  readonly fromF: number | null;
  readonly toF: number | null;
  readonly does: string;
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription';
}

const purdue = { source: 'burbrink-hay-fire-2024', where: 'Critical temperatures', seen: 'print' } as const;
const cornell = { source: 'cornell-hay-fires', where: 'How often to look', seen: 'transcription' } as const;
const pennState = { source: 'hill-hay-fires-2014', where: 'What to do by temperature', seen: 'transcription' } as const;

export const hayHeat = [
  {
    heat: 'up-to-125',
    fromF: null,
    toF: 125,
    does: 'Nothing yet. Look again tomorrow: most fires start two to four weeks after stacking',
    ...purdue,
  },
  { heat: '126', fromF: 126, toF: 139, does: 'Look every day. Keep bales apart, with air between them', ...cornell },
  { heat: '140', fromF: 140, toF: 149, does: 'Look twice a day. It heats faster from here', ...cornell },
  { heat: '140-stricter', fromF: 140, toF: 149, does: 'Tear the stack down and move the bales already', ...pennState },
  {
    heat: '150',
    fromF: 150,
    toF: 159,
    does: 'Entering the danger zone. Look at least twice a day; take the stack apart if you can, so that air cools it',
    ...purdue,
  },
  {
    heat: '150-stricter',
    fromF: 150,
    toF: 159,
    does: 'Pull the hay only with the fire department there: bales can catch as air gets to them',
    ...pennState,
  },
  {
    heat: '160',
    fromF: 160,
    toF: 174,
    does: 'Call the fire department, and have them there before any hay is moved. Look every two hours',
    ...cornell,
  },
  { heat: '175', fromF: 175, toF: 189, does: 'Hot spots are likely. Shut out air, call the fire department, move nothing', ...purdue },
  { heat: '190', fromF: 190, toF: null, does: 'Fire is likely. Only the fire crew moves hay', ...purdue },
] as const satisfies readonly HayHeat[];
