/** The four 24-hour rain distributions of the Soil Conservation Service. */
export type RainType = 'i' | 'ia' | 'ii' | 'iii';

/**
 * Unit peak discharge: log qu = C0 + C1 log Tc + C2 (log Tc)², qu in cubic feet a second per square mile and inch of runoff, Tc in hours.
 * Rows: ratio of initial abstraction to rain, then C0, C1, C2.
 * The last number of type iii, −0.09525, is from memory: the transcription repeats the −0.11508 of the row above it.
 */
export const unitPeakCoefficients = {
  source: 'tr55-1986',
  where: 'appendix F',
  seen: 'transcription',
  types: {
    i: [
      [0.1, 2.3055, -0.51429, -0.1175],
      [0.2, 2.23537, -0.50387, -0.08929],
      [0.25, 2.18219, -0.48488, -0.06589],
      [0.3, 2.10624, -0.45695, -0.02835],
      [0.35, 2.00303, -0.40769, 0.01983],
      [0.4, 1.87733, -0.32274, 0.05754],
      [0.45, 1.76312, -0.15644, 0.00453],
      [0.5, 1.67889, -0.0693, 0],
    ],
    ia: [
      [0.1, 2.0325, -0.31583, -0.13748],
      [0.2, 1.91978, -0.28215, -0.0702],
      [0.25, 1.83842, -0.25543, -0.02597],
      [0.3, 1.72657, -0.19826, 0.02633],
      [0.5, 1.63417, -0.091, 0],
    ],
    ii: [
      [0.1, 2.55323, -0.61512, -0.16403],
      [0.3, 2.46532, -0.62257, -0.11657],
      [0.35, 2.41896, -0.61594, -0.0882],
      [0.4, 2.36409, -0.59857, -0.05621],
      [0.45, 2.29238, -0.57005, -0.02281],
      [0.5, 2.20282, -0.51599, -0.01259],
    ],
    iii: [
      [0.1, 2.47317, -0.51848, -0.17083],
      [0.3, 2.39628, -0.51202, -0.13245],
      [0.35, 2.35477, -0.49735, -0.11985],
      [0.4, 2.30726, -0.46541, -0.11094],
      [0.45, 2.24876, -0.41314, -0.11508],
      [0.5, 2.17772, -0.36803, -0.09525],
    ],
  },
} as const;

/** Share of the peak that is left where ponds and swamps are spread over the area: their share of the area in percent, then the factor. */
export const pondFactors = {
  source: 'tr55-1986',
  where: 'table 4-2',
  seen: 'transcription',
  rows: [
    [0, 1],
    [0.2, 0.97],
    [1, 0.87],
    [3, 0.75],
    [5, 0.72],
  ],
} as const;

/** Roughness for sheet flow, Manning's n. */
export const sheetRoughness = {
  source: 'tr55-1986',
  where: 'table 3-1',
  seen: 'transcription',
  surfaces: {
    smooth: 0.011,
    fallow: 0.05,
    'cultivated-little-residue': 0.06,
    'cultivated-residue': 0.17,
    'short-grass-prairie': 0.15,
    'dense-grass': 0.24,
    bermudagrass: 0.41,
    'natural-range': 0.13,
    'woods-light-underbrush': 0.4,
    'woods-dense-underbrush': 0.8,
  },
} as const;
