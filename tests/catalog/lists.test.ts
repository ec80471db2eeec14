import { expect, it } from 'vitest';
import { calculators, fileOf } from '../support/catalog.ts';

// What no definition can see alone, or its types: its place in a list, and letters of the working.

it.each(calculators)('$slug has a place of its own among the calculators of its topic', ({ slug, topic, order }) => {
  const there = calculators.filter((each) => each.topic === topic && each.order === order).map((each) => each.slug);
  const taken = calculators.filter((each) => each.topic === topic).map((each) => `${each.order} ${each.slug}`);
  expect(there, `${fileOf(slug, 'definition.ts')}: take another \`order\`; in this topic stand ${taken.toSorted().join(', ')}`).toEqual([slug]);
});

it.each(calculators)('$slug has a letter for each number that is asked beside others', ({ slug, inputs }) => {
  const always = Object.entries(inputs).flatMap(([name, input]) =>
    'symbol' in input && input.shownWhen === undefined ? [{ name, symbol: input.symbol }] : [],
  );
  for (const { name, symbol } of always) {
    const same = Object.entries(inputs).filter(([, input]) => 'symbol' in input && input.symbol === symbol);
    expect(
      same.map(([key]) => key),
      `${fileOf(slug, 'inputs.ts')}: ${symbol} stands for more than one number; give each its own symbol`,
    ).toEqual([name]);
  }
});
