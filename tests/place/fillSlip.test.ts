import { expect, it } from 'vitest';
import { isShown, textIn } from '../../calculators/kit/state.ts';
import type { Place } from '../../src/place/model/place.ts';
import { calculatorOf } from '../support/catalog.ts';
import { fill, plain, with_ } from './filled.ts';

const { inputs } = calculatorOf('feed-hazards');
const at = (slip: Place['water'][number]['slip']) => fill('feed-hazards', { place: with_({ water: [{ id: 'w', name: 'Pond', slip }] }) }).texts;
const asked = ['slipNitrateMgPerL', 'slipSulfateMgPerL', 'slipSaltsMgPerL'];
const shownOf = (texts: ReturnType<typeof at>) =>
  asked.flatMap((key) => {
    const input = inputs[key];
    return input && isShown(input, texts) ? [plain(textIn(texts[key]))] : [];
  });

it('opens what the slip of a pond says among the poisons of feed and water', () => {
  const texts = at({ day: '2026-06-03', nitrateMgPerL: 44, sulfateMgPerL: 800, saltMgPerL: 1500 });
  // Which nitrate the laboratory meant the place does not know.
  expect([texts['waterNitrate'], texts['waterSulfate'], texts['waterSalts']]).toEqual(['not-said', 'so4', 'dissolved-solids']);
  expect(shownOf(texts)).toEqual(['44 mg/l', '800 mg/l', '1500 mg/l']);
});
it('opens what was tested and no more', () => {
  const texts = at({ day: '2026-06-03', sulfateMgPerL: 800 });
  expect([texts['waterNitrate'], texts['waterSalts']]).toEqual(['not-tested', 'not-tested']);
  expect(shownOf(texts)).toEqual(['800 mg/l']);
  // A slip of no known day tells nothing.
  expect(shownOf(at({ sulfateMgPerL: 800 }))).toEqual([]);
});
