import { defineEdges, edge, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

/** Januaries that end with 2020, the one in question: before it, years of 1.0, 1.1, 1.2 in and so on. */
const januaries = (yearsBefore: number, ownIn: number) => ({
  records: {
    rainRecord: [
      'year,month,rain (in)',
      ...Array.from({ length: yearsBefore }, (_, year) => `${2020 - yearsBefore + year},1,${(1 + year / 10).toFixed(1)}`),
      `2020,1,${ownIn}`,
    ].join('\n'),
  },
});
/** Against 29 other years, whose tenths lie at 1.2, 1.5, 1.8 in and so on up to 3.6. */
const of29 = (ownIn: number) => januaries(29, ownIn);
const ofOne = 'window=1mo&until=2020-01-31';
/** Junes of some years, 30 days each, the last of them without some days. */
const junes = (unreadDays: number) => ({
  records: {
    rainRecord: [
      'day,rain (in)',
      ...[2018, 2019, 2020].flatMap((year) =>
        Array.from({ length: year === 2020 ? 30 - unreadDays : 30 }, (_, day) => `${year}-06-${String(30 - day).padStart(2, '0')},0.1`).reverse(),
      ),
    ].join('\n'),
  },
});
const ofJune = 'window=1mo&until=2020-06-30';

export default defineEdges(definition, {
  limits: { rainRecord: [0, 60], windowMonths: [1, 24], leastPercent: [50, 100], ownRainIn: [0, 400], stationIn: [0, 60] },
  edges: [
    // 27 of 30 days are nine tenths.
    edge('Too few days of these', { on: `${ofJune}&least=90pct`, raised: junes(4), silent: junes(3) }),
    edge('Some days of these months', { on: ofJune, raised: junes(1), silent: junes(0) }),
    edge('The record ends before the', { raised: 'until=2026-01-01', silent: 'until=2025-12-31' }),
    edge('Under thirty years a record', { on: ofOne, raised: januaries(28, 2), silent: januaries(29, 2) }),
    edge('Looking back over more than', { raised: 'window=13mo', silent: 'window=12mo' }),
    edge('Twelve monthly medians added up', { raised: 'compare-with=medians', silent: '' }),
    edge('The record begins after that', { raised: 'until=1996-01-30', silent: 'until=1996-01-31' }),
    turns('basis', { ranks: januaries(28, 2), index: januaries(29, 2) }, { on: ofOne }),
    turns('basis', { alone: januaries(0, 2), ranks: januaries(1, 2) }, { on: ofOne }),
    turns('basis', { 'not-read': junes(4), ranks: junes(3) }, { on: `${ofJune}&least=90pct` }),
    turns('basis', { medians: 'compare-with=medians', index: '' }),
    turns('group', { 'much-below': of29(1.5), below: of29(1.51) }, { on: ofOne }),
    turns('group', { below: of29(2.1), near: of29(2.11) }, { on: ofOne }),
    turns('group', { near: of29(2.7), above: of29(2.71) }, { on: ofOne }),
    turns('group', { above: of29(3.3), 'much-above': of29(3.31) }, { on: ofOne }),
    turns('verdict', { 'extremely-dry': of29(0.97), 'severely-dry': of29(0.98) }, { on: ofOne }),
    turns('verdict', { 'severely-dry': of29(1.23), 'moderately-dry': of29(1.24) }, { on: ofOne }),
    turns('verdict', { 'moderately-dry': of29(1.53), 'near-normal': of29(1.54) }, { on: ofOne }),
    turns('verdict', { 'near-normal': of29(3.26), 'moderately-wet': of29(3.27) }, { on: ofOne }),
    turns('verdict', { 'moderately-wet': of29(3.83), 'very-wet': of29(3.84) }, { on: ofOne }),
    turns('verdict', { 'very-wet': of29(4.46), 'extremely-wet': of29(4.47) }, { on: ofOne }),
  ],
});
