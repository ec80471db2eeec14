import type { Office } from '../../src/office/model/office.ts';

const source = 'common practice';
/** An office that gives something of everything. Its figures are invented. */
export const anOffice: Office = {
  file: 'holdwater-office',
  v: 1,
  head: {
    name: 'Example County office',
    where: 'Example County: “rolling” ground',
    address: '1 Main Street, Example',
    phone: '555-0100',
    copyAt: 'https://office.example/pasture/',
    valuesDay: '2026-09-14',
    startedFrom: 'fescue-belt',
  },
  values: {
    talkToSomeone: {
      lines: [{ who: 'Example County farm-stress line', reach: 'call or text 555-0199', hours: 'weekdays 8 to 5', source }],
      near: 'Your own doctor, a neighbor, the Example County office.',
    },
    hayPrice: {
      crop: 'grass',
      of: 'county auction, large rounds',
      lowUsdPerTon: 120,
      likelyUsdPerTon: 165,
      highUsdPerTon: 210,
      seen: '2026-09',
      source,
    },
    stockPrices: {
      of: 'county auction',
      calfEarlyUsdPerCwt: 310,
      calfUsualUsdPerCwt: 270,
      cowSaleUsd: 1900,
      buyBackLowUsd: 2400,
      buyBackLikelyUsd: 2800,
      buyBackHighUsd: 3300,
      seen: '2026-09',
      source,
    },
    freight: { of: '60 miles, 34 rounds', usdPerLoad: 450, seen: '2026-09', source },
    interest: { of: 'operating loan', percent: 8.5, seen: '2026', source },
    stubble: { rows: [{ forage: 'Tall fescue', startIn: [7, 9], stopIn: [3, 4.5], source }] },
    yields: { of: 'fescue on upland', poorLbPerAc: 2100, normalLbPerAc: 4300, goodLbPerAc: null, source },
    growthMonths: { of: 'cool-season pasture', startMonth: 'apr', bestMonth: 'jun', quitMonth: 'nov', fallFlush: 'much', source },
    growthCurve: { curves: [{ name: 'fescue', percentByMonth: [0, 0, 7.1, 17.3, 27.6, 17, 5, 5, 11, 10, 0, 0], source }], markers: [] },
    restDays: { fastDays: 21, slowDays: 45, says: 'Fescue and clover', source },
    waterUse: { of: 'grass that has water', inPerDay: [null, null, 0.08, 0.12, 0.17, 0.2, 0.21, 0.18, 0.13, 0.08, null, null], source },
    rainMonths: { station: 'Example City', are: 'medians', inches: [2, 2.1, 3, 3.6, 4.4, 4, 3, 2.6, 3, 2.8, 2.9, 2.2], source },
    erosivity: { low: 180, likely: 200, high: 220, says: 'the whole county', source },
    decisionDates: [{ date: '06-15', says: 'Decide on early weaning.', source }],
    sowingDates: [{ crop: 'Oats', from: '08-10', by: '09-10', source }],
    frost: { of: 'half of all years', firstDay: '10-12', source },
  },
  words: { ground: 'trap' },
  cautions: [{ says: 'Sinkholes: keep stock off them, and out of them.', source }],
};

/** The same with something at a path otherwise: as data, for it may be wrong. `undefined` takes it out. */
export function officeWith(path: string, to: unknown): unknown {
  const data: unknown = structuredClone(anOffice);
  const steps = path.split('.');
  const last = steps.pop();
  const inside = steps.reduce<unknown>((here, step) => (typeof here === 'object' && here !== null ? Reflect.get(here, step) : undefined), data);
  if (typeof inside !== 'object' || inside === null || last === undefined) throw new RangeError(`nothing at ${path}`);
  if (to === undefined) Reflect.deleteProperty(inside, last);
  else Reflect.set(inside, last, to);
  return data;
}
