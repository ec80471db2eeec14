/** How ground is grazed, in people's words; with its cover it makes the class for storm runoff. */
export const howGrazed = {
  heavy: { label: 'Hard: little left, no litter on the ground', short: 'grazed hard' },
  moderate: { label: 'About half is left', short: 'about half left' },
  light: { label: 'Lightly or now and then; most is left', short: 'grazed lightly' },
  rested: { label: 'Rested, not grazed now', short: 'rested' },
} as const;

/** How acres are come by without an instrument. */
export const acresByPacing =
  'A map with a scale, or pace the fence lines: length times width in yards, divided by 4,840, is acres; in meters, by 10,000, hectares.';
