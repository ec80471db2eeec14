/**
 * Share of a day's rain that has fallen by an hour, for the four 24-hour distributions of the Soil Conservation Service: hour, then types I, IA, II, III.
 * I and IA belong to the Pacific side, III to the Gulf and Atlantic coast, II to the rest of the United States.
 * Two cells of the copy (type I at 13 and 14 h) stand here as two other copies have them.
 */
export const designStorms = {
  source: 'scs-1986-distributions',
  where: 'mass curves, 23 times',
  seen: 'transcription',
  rows: [
    [0, 0, 0, 0, 0],
    [2, 0.035, 0.05, 0.022, 0.02],
    [4, 0.076, 0.116, 0.048, 0.043],
    [6, 0.125, 0.206, 0.08, 0.072],
    [7, 0.156, 0.268, 0.098, 0.089],
    [8, 0.194, 0.425, 0.12, 0.115],
    [8.5, 0.219, 0.48, 0.133, 0.13],
    [9, 0.254, 0.52, 0.147, 0.148],
    [9.5, 0.303, 0.55, 0.163, 0.167],
    [9.75, 0.362, 0.564, 0.172, 0.178],
    [10, 0.515, 0.577, 0.181, 0.189],
    [10.5, 0.583, 0.601, 0.204, 0.216],
    [11, 0.624, 0.624, 0.235, 0.25],
    [11.5, 0.654, 0.645, 0.283, 0.298],
    [11.75, 0.669, 0.655, 0.357, 0.339],
    [12, 0.682, 0.664, 0.663, 0.5],
    [12.5, 0.706, 0.683, 0.735, 0.702],
    [13, 0.727, 0.701, 0.772, 0.751],
    [13.5, 0.748, 0.719, 0.799, 0.785],
    [14, 0.767, 0.736, 0.82, 0.811],
    [16, 0.83, 0.8, 0.88, 0.886],
    [20, 0.926, 0.906, 0.952, 0.957],
    [24, 1, 1, 1, 1],
  ],
} as const;
