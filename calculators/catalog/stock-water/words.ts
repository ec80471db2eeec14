/** Which list asked for most; `own` where somebody measured. */
export const listWords = {
  'gould-fs1090': 'Michigan manual',
  'beef-summer-water': 'summer water list',
  'k-state-watering-handbook': 'Kansas handbook',
  'sigler-mt202209ag-2022': 'Montana guide',
  'noble-water-1999': 'rule by degree',
  'pennington-2014': 'Missouri sheep guide',
  'mwps14-new-hampshire': 'farm animal table',
  'burbrink-2022': 'Indiana guide',
  'german-c274-2008': 'Dakota guide',
  own: 'your figure',
} as const;
export type ListName = keyof typeof listWords;
export const isListName = (name: string): name is ListName => Object.hasOwn(listWords, name);
