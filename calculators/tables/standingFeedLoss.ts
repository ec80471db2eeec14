/** Standing feed that weather takes once growth has stopped, percent of the peak for each month, or over a whole winter. */
export const standingFeedLossPerMonth = [
  {
    feed: 'Annual range, California, wet year 2017',
    percentPerMonth: 7.3,
    seasonPercent: 46.5,
    source: 'larsen-2021',
    where: 'Abstract',
    seen: 'print',
  },
  { feed: 'Annual range, California, 2016', percentPerMonth: 8.7, seasonPercent: 55.0, source: 'larsen-2021', where: 'Abstract', seen: 'print' },
  {
    feed: 'Annual range, California, dry year 2015',
    percentPerMonth: 9.7,
    seasonPercent: 61.5,
    source: 'larsen-2021',
    where: 'Abstract',
    seen: 'print',
  },
] as const;

export const standingFeedLossPerWinter = [
  { feed: 'Tall fescue saved for winter', percent: 25, source: 'tall-fescue-monograph', where: 'Stockpiling, dry matter losses', seen: 'print' },
] as const;
