import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { seededRandom } from './seededRandom.ts';

/** The whole number that the generator draws before it is scaled. */
const scale = 2 ** 32 - 208;
function nth(seed: number, position: number): number {
  const random = seededRandom(seed);
  let value = Number.NaN;
  for (let step = 0; step < position; step += 1) value = random();
  return Math.round(value * scale);
}
function counts(seed: number): readonly number[] {
  const random = seededRandom(seed);
  const found = [0, 0, 0, 0, 0];
  for (let step = 0; step < 100_000; step += 1) {
    const bin = Math.floor(random() * 5);
    found[bin] = needThere('seededRandom', `fifth ${bin}`, found[bin]) + 1;
  }
  return found;
}

export default checkList('seededRandom', [
  ...tableChecks({
    columns: ['value'],
    text: `
      1  1459213977
      2  2827710106
      3  4245671317
      4  3877608661
      5  2595287583
    `,
    what: (position) => `Number ${position} from seed 1234567`,
    ours: (position) => nth(1_234_567, Number(position)),
    source: 'rosetta-mrg32k3a',
    where: 'task description',
    seen: 'transcription',
  }),
  ...tableChecks({
    columns: ['count'],
    text: `
      0  20002
      1  20060
      2  19948
      3  20059
      4  19931
    `,
    what: (fifth) => `Numbers in fifth ${fifth} of 100,000 from seed 987654321`,
    ours: (fifth) => needThere('seededRandom', `fifth ${fifth}`, counts(987_654_321)[Number(fifth)]),
    source: 'rosetta-mrg32k3a',
    where: 'task description',
    seen: 'transcription',
  }),
]);
