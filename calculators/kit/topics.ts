/** What calculators are listed under, in the order in which the first page asks. A definition names one as its `topic`. */
export const topics = {
  rain: 'Rain and the ground',
  grass: 'Grass and the herd',
  hay: 'Hay and money',
  harm: 'Water and feed that can harm',
  ahead: 'The season ahead',
  tailgate: 'On the tailgate',
} as const;
export type Topic = keyof typeof topics;
