import { expect, it } from 'vitest';
import { holding } from '../../calculators/kit/holding.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { rowsIn } from '../../calculators/kit/state.ts';
import type { Place } from '../../src/place/model/place.ts';
import { ledBirths, saysNoHay } from '../../src/place/offer/ledTo.ts';
import { calculatorOf } from '../support/catalog.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { day, plain, with_ } from './filled.ts';

const hay = calculatorOf('hay-to-grass');
/** As “Days of grass left” leads on. */
const query =
  'from=2026-07-11&on-hand=none&to=&herd.stock=cow,bull,ewe&herd.count=30,2,50&herd.weight=1100lb,1800lb,150lb&herd.intake=2.5pct,2pct,4pct&herd.births=no,no,no';
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
  // The place has no ewes: nobody has said when they lamb.
  expect(ewe?.slice(0, 4)).toEqual(['50', '150 lb', '4 pct', 'no']);
});
it('knows a ewe that is late today', () => {
  const lambing = { id: 'e', kind: 'ewe', countHead: 60, weightLb: 160, birthsDay: '07-20' } as const;
  expect(led([lambing])[2]?.[3]).toBe('yes');
});
it('changes nothing where the place has no births', () => {
  const { birthsDay, ...unknown } = cows;
  expect(birthsDay).toBe('03-10');
  expect(led([unknown])[0]?.slice(0, 4)).toEqual(['30', '1100 lb', '2.5 pct', 'no']);
});
it('takes no hay of such a link for an answer, and no other word of it', () => {
  const { form } = fromLink(hay, query);
  expect(Object.keys(hay.inputs).filter((key) => saysNoHay(hay.inputs[key], form.this[key]))).toEqual(['onHand']);
  expect(saysNoHay(hay.inputs['onHand'], 'now')).toBe(false);
});
