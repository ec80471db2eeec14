import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { searchedDepthCm, soilGroupFromConductivity } from './soilGroupFromConductivity.ts';

/** Barrier and water table of each row of the printed table, cm. */
const places: Readonly<Record<string, readonly [barrierDepthCm: number, waterTableDepthCm: number]>> = {
  'barrier<50': [49, Infinity],
  'barrier50-100,water<60': [50, 59],
  'barrier50-100,water>=60': [100, 101],
  'barrier>100,water<60': [101, 30],
  'barrier>100,water60-100': [150, 100],
  'barrier>100,water60': [150, 60],
  'barrier>100,water>100': [150, 101],
};
const at = (place: string) => needThere('soilGroupFromConductivity', place, places[place]);

const letters = (place: string, conductivity: string): string => {
  const [barrierDepthCm, waterTableDepthCm] = at(place);
  const { group, drainedGroup } = soilGroupFromConductivity({ leastConductivityUmPerS: Number(conductivity), barrierDepthCm, waterTableDepthCm });
  return (drainedGroup === null ? group : `${drainedGroup}/${group}`).toUpperCase();
};

const table = { source: 'nrcs-neh630-07-2009', where: 'table 7-1', seen: 'transcription' } as const;

export default checkList('soilGroupFromConductivity', [
  // Each row at its own limits and just past them: a limit belongs to the slower group.
  ...tableChecks({
    columns: ['0.4', '0.41', '1', '1.1', '4', '4.1', '10', '10.1', '40', '40.1'],
    text: `
      barrier<50               -  -    -  -    -    -    -    -    -    D
      barrier50-100,water<60   -  -    D  C/D  -    -    C/D  B/D  B/D  A/D
      barrier50-100,water>=60  -  -    D  C    -    -    C    B    B    A
      barrier>100,water<60     D  C/D  -  -    C/D  B/D  B/D  A/D  -    -
      barrier>100,water60-100  -  -    D  C    -    -    C    B    B    A
      barrier>100,water60      -  -    D  C    -    -    C    B    B    A
      barrier>100,water>100    D  C    -  -    C    B    B    A    -    -
    `,
    what: (place, conductivity) => `${place} (cm), tightest layer ${conductivity} µm/s`,
    ours: letters,
    ...table,
  }),
  ...tableChecks({
    columns: ['searched'],
    text: `
      barrier50-100,water<60   60
      barrier50-100,water>=60  50
      barrier>100,water<60     100
      barrier>100,water60-100  50
      barrier>100,water>100    100
    `,
    what: (place) => `${place} (cm), depth that is searched, cm`,
    ours: (place) => searchedDepthCm(...at(place)),
    ...table,
  }),
]);
