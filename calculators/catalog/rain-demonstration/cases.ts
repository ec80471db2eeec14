import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const foot = 'length=12in&width=12in';
const can = { source: 'irrigation-repair-rate', where: 'the measuring can method', seen: 'print' } as const;
/** A tenth of an inch in ten minutes is 14.4 cubic inches on a square foot, 235.97 mL. */
const tenth = `${foot}&head-from=jar&jar=other&other=235.9737216&fill=600s&jars=not-yet`;
const rain = (rainIn: number): string => `${tenth}&rain=${rainIn}in`;

/** No publication was found that prints jar readings of such trays with their shares: those rest on plain division. */
const measures = { source: 'common practice', where: 'US customary measures', seen: 'practice' } as const;
const water = (name: string, query: string, expect: Case['expect'], from: Omit<Case, 'name' | 'query' | 'expect'>): Case => ({
  name,
  query: `${query}&jars=not-yet`,
  expect,
  ...from,
});

export default defineCases(definition, [
  water('an inch on a square foot', `${foot}&rain=1in`, { pourGal: '0.6' }, { source: 'hodgin-2013', where: 'rainwater harvesting', seen: 'print' }),
  {
    name: 'a gallon a minute on a square foot',
    query: `${foot}&head-from=jar&jar=other&other=3785.411784&fill=60s&jars=not-yet&wanted=12`,
    expect: { timedInPerHr: '96.25' },
    source: 'irrigation-repair-rate',
    where: 'constant of the precipitation rate formula',
    seen: 'print',
    differs: {
      by: '0.011',
      because: 'The constant is built with 7.48 gallons in a cubic foot cut after two digits; exactly it is 96.2500 by 231 cubic inches.',
    },
  },
  { name: 'a tenth of an inch in ten minutes', query: rain(1), expect: { rateInPerHr: '0.6' }, ...can },
  { name: 'one inch at that rate', query: rain(1), expect: { rainMin: '100', 'otherRains.2.fallMin': '100' }, ...can },
  { name: 'an inch and a half at that rate', query: rain(1.5), expect: { rainMin: '150', 'otherRains.3.fallMin': '150' }, ...can },
  water('231 cubic inches are a gallon and four quarts', 'length=21in&width=11in&rain=1in', { pourGal: '1.000', pourQt: '4.000' }, measures),
  {
    name: 'a pint in two minutes is a quarter of a gallon in four',
    query: 'length=21in&width=11in&head-from=jar&jar=pint&fill=120s&jars=not-yet',
    expect: { timedInPerHr: '3.75' },
    source: 'common practice',
    where: 'US customary measures: 3.75 gal in an hour, an inch each on this tray',
    seen: 'computed',
  },
  {
    name: 'a tablespoon a minute from one hole, 960 of them wanted in an hour',
    query: 'length=21in&width=11in&head-from=one-hole&spoon=60s&wanted=3.75&jars=not-yet',
    expect: { holesExactCount: '16.00', needHolesCount: '16' },
    source: 'common practice',
    where: 'US customary measures: 3.75 gal are 960 tablespoons, one hole gives 60',
    seen: 'computed',
  },
]);
