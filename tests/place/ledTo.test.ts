import { expect, it } from 'vitest';
import { holding } from '../../calculators/kit/holding.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { rowsIn } from '../../calculators/kit/state.ts';
import type { Place } from '../../src/place/model/place.ts';
import { ledBirths } from '../../src/place/offer/ledTo.ts';
import { calculatorOf } from '../support/catalog.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { day, plain, with_ } from './filled.ts';

const hay = calculatorOf('hay-to-grass');
/** As “Days of grass left” leads on. */
const query =
  'from=2026-07-11&to=&on-hand=&herd.stock=cow,bull,ewe&herd.count=30,2,50&herd.weight=1100lb,1800lb,150lb&herd.intake=2.5pct,2pct,4pct&herd.births=,no,';
const today = day('2026-07-01');
const led = (herd: Place['herd']) => {
  const { form } = fromLink(hay, query);
  const placed = fillTexts(holding(hay, { fromDay: '2026-07-11' }), allOffers(with_({ herd }), today), today).texts;
  return rowsIn(ledBirths(hay.inputs, form.this, placed)['herd']).map((row) =>
    ['countHead', 'weightLb', 'intakePercent', 'hasBirths', 'birthDay', 'nursingPercent'].map((name) => plain(row[name] ?? '')),
  );
};
const cows = { id: 'c', kind: 'cow', countHead: 45, weightLb: 1250, birthsDay: '03-10' } as const;
const bulls = { id: 'b', kind: 'bull', countHead: 3, weightLb: 1900 } as const;

it('puts the births of the place into the herd that a result led to, and leaves its head and weights', () => {
  const [cow, bull, ewe] = led([bulls, cows]);
  // Dry 2.2 %, nursing 2.5 % of her weight (hibberd-thrift-1992).
  expect(cow).toEqual(['30', '1100 lb', '2.2 pct', 'yes', '2027-03-10', '2.5 pct']);
  expect(bull?.slice(0, 4)).toEqual(['2', '1800 lb', '2 pct', 'no']);
  // The place has no ewes: nobody has said whether they lamb, and the form asks.
  expect(ewe?.slice(0, 4)).toEqual(['50', '150 lb', '4 pct', '']);
});
it('knows a ewe that is late today', () => {
  const lambing = { id: 'e', kind: 'ewe', countHead: 60, weightLb: 160, birthsDay: '07-20' } as const;
  expect(led([lambing])[2]?.[3]).toBe('yes');
});
it('leaves what one eats where the place has that kind and no births', () => {
  const { birthsDay, ...unknown } = cows;
  expect(birthsDay).toBe('03-10');
  expect(led([unknown])[0]?.slice(0, 4)).toEqual(['30', '1100 lb', '2.5 pct', 'no']);
});
