/**
 * Daily mean temperatures between which forage grows, degrees Fahrenheit, and the base from which its degree days are counted.
 * Published corners differ by several degrees: they are a guide, and the place's own grass decides. The season day by day has corners of its own
 * (`calculators/season/parameters.ts`): it counts light apart, and by this best range grass would hardly grow in April.
 */
export const growthTemperatures = {
  'cool-season': {
    startF: { value: 42, source: 'fransen-growth', where: 'growth starts', seen: 'print' },
    bestFromF: { value: 65, source: 'agupdate-tate-2022', where: 'average daily temperatures', seen: 'print' },
    bestToF: { value: 75, source: 'agupdate-tate-2022', where: 'average daily temperatures', seen: 'print' },
    stopF: { value: 85, source: 'fransen-growth', where: 'growth stops', seen: 'print' },
    degreeDayBaseF: { value: 32, source: 'ndsu-r1061', where: 'base for cool-season range grasses', seen: 'print' },
  },
  'warm-season': {
    startF: { value: 50, source: 'kreuser-degree-days', where: 'base for warm-season turf', seen: 'print' },
    bestFromF: { value: 75, source: 'agupdate-tate-2022', where: 'average daily temperatures', seen: 'print' },
    bestToF: { value: 95, source: 'agupdate-tate-2022', where: 'average daily temperatures', seen: 'print' },
    stopF: { value: 110, source: 'jouven-2006', where: 'no source for warm-season grass: its shape moved up', seen: 'memory' },
    degreeDayBaseF: { value: 40, source: 'ndsu-r1061', where: 'base for warm-season range grasses', seen: 'print' },
  },
} as const;
