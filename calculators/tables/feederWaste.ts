/**
 * Hay wasted at feeding, percent of what was offered, by how it is fed. Low and high are the least and the most of the published columns, likely
 * their median. The trials fed good hay; poor or moldy hay wastes more.
 */
export interface FeederWaste {
  readonly feeder: string;
  readonly name: string;
  readonly lowPercent: number;
  readonly likelyPercent: number;
  readonly highPercent: number;
  readonly columns: readonly {
    readonly percent: number;
    readonly source: string;
    readonly where: string;
    readonly seen: 'print' | 'transcription';
  }[];
}

const buskirk = { source: 'buskirk-2003', where: 'Hay waste by feeder', seen: 'transcription' } as const;
const lalman = { source: 'lalman-feeders', where: 'Hay waste by feeder', seen: 'transcription' } as const;
const schnakenberg = { source: 'schnakenberg-feeders', where: 'Hay waste by feeder', seen: 'print' } as const;
const bellMartz = { source: 'bell-martz-1973', where: 'Rack against ground', seen: 'transcription' } as const;
const boyles = { source: 'boyles-2019', where: 'Free access to bales', seen: 'print' } as const;
const unrolled = { source: 'kallenbach-g4570', where: 'Hay unrolled on the ground', seen: 'transcription' } as const;

export const feederWaste = [
  {
    feeder: 'cone',
    name: 'Cone feeder',
    lowPercent: 3.5,
    likelyPercent: 4.4,
    highPercent: 5.3,
    columns: [
      { percent: 3.5, ...buskirk },
      { percent: 5.3, ...lalman },
    ],
  },
  {
    feeder: 'ring-sheeted',
    name: 'Ring with sheeted bottom',
    lowPercent: 13,
    likelyPercent: 13,
    highPercent: 13,
    columns: [
      { percent: 13.0, ...lalman },
      { percent: 13, ...schnakenberg },
    ],
  },
  {
    feeder: 'ring-open',
    name: 'Open ring',
    lowPercent: 6.1,
    likelyPercent: 20,
    highPercent: 20.5,
    columns: [
      { percent: 6.1, ...buskirk },
      { percent: 20.5, ...lalman },
      { percent: 20, ...schnakenberg },
    ],
  },
  { feeder: 'ring-poly', name: 'Poly ring', lowPercent: 21, likelyPercent: 21, highPercent: 21, columns: [{ percent: 21.0, ...lalman }] },
  { feeder: 'trailer', name: 'Trailer', lowPercent: 11.4, likelyPercent: 11.4, highPercent: 11.4, columns: [{ percent: 11.4, ...buskirk }] },
  { feeder: 'cradle', name: 'Cradle', lowPercent: 14.6, likelyPercent: 14.6, highPercent: 14.6, columns: [{ percent: 14.6, ...buskirk }] },
  { feeder: 'square-rack', name: 'Square bale in a rack', lowPercent: 7, likelyPercent: 7, highPercent: 7, columns: [{ percent: 7, ...bellMartz }] },
  { feeder: 'round-rack', name: 'Round bale in a rack', lowPercent: 9, likelyPercent: 9, highPercent: 9, columns: [{ percent: 9, ...bellMartz }] },
  {
    feeder: 'no-rack',
    name: 'Round bale set out, no rack',
    lowPercent: 25,
    likelyPercent: 45,
    highPercent: 45,
    columns: [
      { percent: 25, ...boyles },
      { percent: 45, ...boyles },
      { percent: 45, ...bellMartz },
    ],
  },
  {
    feeder: 'unrolled',
    name: 'Unrolled on the ground, at worst',
    lowPercent: 50,
    likelyPercent: 50,
    highPercent: 50,
    columns: [{ percent: 50, ...unrolled }],
  },
] as const satisfies readonly FeederWaste[];

/** Waste by days' supply put out at once; the body of the printed table was not seen. */
export const wasteByDaysSupply = [
  { package: 'small-square', rackOneDayPercent: 3.9, rackSevenDaysPercent: 4.1, groundOneDayPercent: 6.7 },
  { package: 'large-round', rackOneDayPercent: 4.9, rackSevenDaysPercent: 5.4, groundOneDayPercent: 12.3, groundSevenDaysPercent: 43.0 },
  { package: 'formed-stack', rackOneDayPercent: 8.8, rackSevenDaysPercent: 15.0, groundOneDayPercent: 22.6, groundSevenDaysPercent: 41.0 },
] as const;
export const wasteByDaysSupplySource = { source: 'kallenbach-g4570', where: 'Table 1', seen: 'memory' } as const;
