/** The views behind `#`, in the order in which they stand. */
export const views = [
  { key: '', title: 'Your place', short: 'Start', isOfPlace: false },
  { key: 'gate', title: 'At the gate', short: 'Gate', isOfPlace: true, says: 'moves, rain, hay and heights, a tap or two each' },
  { key: 'record', title: 'The record', short: 'Record', isOfPlace: true, says: 'what was done, year by year' },
  { key: 'ground', title: 'Pastures and soils', short: 'Ground', isOfPlace: true },
  { key: 'stock', title: 'Stock', short: 'Stock', isOfPlace: true },
  { key: 'feed', title: 'Hay and prices', short: 'Feed', isOfPlace: true },
  { key: 'water', title: 'Water', short: 'Water', isOfPlace: true },
  { key: 'season', title: 'Season and rain', short: 'Season', isOfPlace: true },
  { key: 'tools', title: 'Your tools', short: 'Tools', isOfPlace: true },
  { key: 'visits', title: 'Visits', short: 'Visits', isOfPlace: true, says: 'what was seen, worked out and agreed on a day' },
  { key: 'plan', title: 'Drought plan on one page', short: '', isOfPlace: true, says: 'the sheet with your figures in it, to print and sign' },
  { key: 'files', title: 'Files and what is kept', short: 'Files', isOfPlace: false },
  // Reached from a view, and not from the row of them.
  { key: 'visit', title: 'A visit', short: '', isOfPlace: false, within: 'visits' },
  { key: 'note', title: 'Follow-up note', short: '', isOfPlace: false, within: 'visits' },
  { key: 'link', title: 'Open a link', short: '', isOfPlace: false },
  { key: 'compare', title: 'Two visits side by side', short: '', isOfPlace: false, within: 'visits' },
] as const;
export type ViewKey = (typeof views)[number]['key'];
/** The view that an address asks for. */
export const viewIn = (hash: string): (typeof views)[number] => views.find(({ key }) => hash.replace(/^#\/?/, '').split('/')[0] === key) ?? views[0];
/** What follows the view in an address: `#/visit/ID`. */
export const partsIn = (hash: string): readonly string[] => hash.replace(/^#\/?/, '').split('/').slice(1);
