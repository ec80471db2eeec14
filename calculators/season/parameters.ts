/**
 * Every number of the season that is neither asked nor measured: what it is, how far it may honestly be off, and where it is from. `our own` was
 * set by us, `memory` recalled from a print that nobody opened again; the others name a source. A page that shows an answer shows its swing with these.
 */
export interface Parameter {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly from: string;
}
const parameter = (value: number, low: number, high: number, from: string): Parameter => ({ value, low, high, from });

/** What turns days of weather into what grass and soil feel. */
export const climateParameters = {
  /** Local factor on the reference use; 0.92 in the humid South and East. */
  referenceFactor: parameter(1, 0.85, 1.15, 'our own; the equation reads high in damp places and low on windy plains'),
  snowAtC: parameter(1, 0, 2, 'memory'),
  meltMmPerC: parameter(3.5, 2.4, 4.5, 'kuusisto-1980'),
  startF: parameter(40, 38, 42, 'jouven-2006 (39) and fransen-growth (42)'),
  bestFromF: parameter(55, 50, 65, 'our own: agrees with growth in spring in Ohio, so that is no test of it'),
  bestToF: parameter(68, 65, 75, 'jouven-2006'),
  stopF: parameter(90, 85, 95, 'our own: halfway between fransen-growth and jouven-2006'),
  /** A night this cold kills leaves. */
  frostC: parameter(-4, -6, -2, 'allen-1998, table 11: end of the season of hay'),
  rotPerC: parameter(0.0003, 0.000_15, 0.000_45, 'our own'),
  meanOverDays: parameter(10, 5, 15, 'jouven-2006'),
  flushLow: parameter(0.7, 0.6, 1, 'jouven-2006, between its kinds of grass'),
  flushHigh: parameter(1.3, 1, 1.6, 'jouven-2006, between its kinds of grass'),
  flushFirstC: parameter(775, 700, 850, 'jouven-2006, between its kinds of grass'),
  flushSecondC: parameter(1450, 1300, 1600, 'jouven-2006, between its kinds of grass'),
} as const satisfies Readonly<Record<string, Parameter>>;

/** How grass grows, dies, covers the ground and drinks. */
export const grassParameters = {
  crownLbPerAc: parameter(150, 75, 300, 'our own'),
  dyingByAge: parameter(0.008, 0.005, 0.015, 'our own, held to the share of growth that dies uneaten'),
  dyingByDrought: parameter(0.012, 0, 0.025, 'our own'),
  dyingByFrost: parameter(0.03, 0, 0.05, 'our own'),
  fallingShare: parameter(0.0024, 0.001_36, 0.0035, 'larsen-2021: about 7 % a month'),
  perGreenAcPerLb: parameter(0.001_18, 0.0008, 0.0016, 'memory: light under grass, and leaf area by weight'),
  perDeadAcPerLb: parameter(0.0006, 0.0003, 0.0009, 'memory: cover by pounds of small-grain residue'),
  perLitterAcPerLb: parameter(0.001, 0.0005, 0.0015, 'memory: cover by pounds of small-grain residue'),
  baseShare: parameter(0.15, 0.05, 0.3, 'our own'),
  fullCoefficient: parameter(0.95, 0.8, 1.05, 'allen-1998, table 17 (from memory)'),
  bareCoefficient: parameter(0.15, 0.1, 0.2, 'allen-1998, table 17 (from memory)'),
  maximumCoefficient: parameter(1.2, 1.1, 1.3, 'allen-1998, eq. 72'),
  depletionFraction: parameter(0.6, 0.5, 0.65, 'allen-1998, table 22'),
  rootShareInTop: parameter(0.8, 0.7, 0.9, 'jackson-1996'),
  leafStoreMm: parameter(1.5, 0.5, 2.5, 'thurow-1987, 1.0 and 1.8 mm'),
} as const satisfies Readonly<Record<string, Parameter>>;

/** How stock graze, and what becomes of hay, where nothing else is asked. */
export const grazingParameters = {
  outOfReachLbPerAc: parameter(150, 75, 300, 'our own'),
  fullIntakeFromLbPerAc: parameter(750, 400, 1200, 'white-b5036; guides for humid pasture print 1,200'),
  greenPreference: parameter(3, 1, 6, 'our own'),
  trampledPerEaten: parameter(0.54, 0.25, 1, 'our own: 65 % of what goes is eaten'),
  usableShare: parameter(0.5, 0.35, 0.7, 'common practice'),
  entryAboveLbPerAc: parameter(200, 0, 500, 'our own'),
  cutLeavesLbPerAc: parameter(600, 400, 800, 'our own'),
  cutWorthLbPerAc: parameter(1500, 1200, 2000, 'our own'),
  hayKeptShare: parameter(0.85, 0.75, 0.92, 'common practice'),
} as const satisfies Readonly<Record<string, Parameter>>;

/** Standing mass at which growth stops, over what stands at the peak of a usual year. */
export const ceilingOverPeak = parameter(2, 1.25, 2.5, 'our own');

type Values<Parameters> = { readonly [Key in keyof Parameters]: number };
function valuesOf<const Parameters extends Readonly<Record<string, Parameter>>>(parameters: Parameters): Values<Parameters>;
function valuesOf(parameters: Readonly<Record<string, Parameter>>): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(parameters).map(([key, { value }]) => [key, value]));
}
export const climateDefaults = valuesOf(climateParameters);
export const grassDefaults = valuesOf(grassParameters);
export const grazingDefaults = valuesOf(grazingParameters);
