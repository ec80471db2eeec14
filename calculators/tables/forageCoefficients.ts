/** Crop coefficients, heights, root depths and depletion fractions of forages. */
export interface ForageCoefficients {
  readonly forage: string;
  readonly name: string;
  readonly initial: number;
  readonly middle: number;
  readonly end: number;
  /** Highest that the plants grow, meters. */
  readonly heightM: number;
  /** Shallower for planning irrigation, deeper for rain-fed stress, meters. */
  readonly rootDepthM: readonly [shallow: number, deep: number];
  /** Share of the available water taken before stress, at 5 mm a day. */
  readonly depletionFraction: number;
}

/** Single coefficients for a climate of 2 m/s wind and 45 % least humidity; the range of rotated pasture (0.85 to 1.05) is given as its middle. */
export const forageCoefficients = {
  source: 'allen-1998',
  where: 'tables 12 and 22',
  seen: 'print',
  rows: [
    row('pasture-rotated', 'Grazing pasture, rotated', [0.4, 0.95, 0.85], 0.3, [0.5, 1.5], 0.6),
    row('pasture-extensive', 'Grazing pasture, extensive', [0.3, 0.75, 0.75], 0.1, [0.5, 1.5], 0.6),
    row('alfalfa-hay', 'Alfalfa hay, averaged over cuttings', [0.4, 0.95, 0.9], 0.7, [1, 2], 0.55),
    row('bermuda-hay', 'Bermudagrass hay, averaged over cuttings', [0.55, 1, 0.85], 0.35, [1, 1.5], 0.55),
    row('clover-hay', 'Berseem clover hay, averaged over cuttings', [0.4, 0.9, 0.85], 0.6, [0.6, 0.9], 0.5),
    row('ryegrass-hay', 'Ryegrass hay, averaged over cuttings', [0.95, 1.05, 1], 0.3, [0.6, 1], 0.6),
    row('sudangrass-hay', 'Sudangrass hay, averaged over cuttings', [0.5, 0.9, 0.85], 1.2, [1, 1.5], 0.55),
  ],
} as const satisfies { readonly rows: readonly ForageCoefficients[] } & Record<string, unknown>;

function row(
  forage: string,
  name: string,
  [initial, middle, end]: readonly [number, number, number],
  heightM: number,
  rootDepthM: readonly [number, number],
  depletionFraction: number,
): ForageCoefficients {
  return { forage, name, initial, middle, end, heightM, rootDepthM, depletionFraction };
}
