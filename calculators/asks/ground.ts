/** How ground is grazed, in people's words; with its cover it makes the class for storm runoff. */
export const howGrazed = {
  heavy: 'Hard: little left, no litter on the ground',
  moderate: 'About half is left',
  light: 'Lightly or now and then; most is left',
  rested: 'Rested, not grazed now',
} as const;

/** How acres are come by without an instrument. */
export const acresByPacing = 'A map with a scale, or pace the fence lines: length times width in yards, divided by 4,840, is acres.';
