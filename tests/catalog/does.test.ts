import { expect, it } from 'vitest';
import type { Calculator } from '../../calculators/kit/define.ts';
import { calculators } from '../support/catalog.ts';

/** What choosing a kind of stock fills in, in every table of every form that has it. */
const fillsOf = (kind: string) =>
  calculators.flatMap(({ slug, inputs }: Pick<Calculator, 'slug' | 'inputs'>) =>
    Object.values(inputs).flatMap((input) =>
      input.kind === 'rows'
        ? Object.values(input.columns).flatMap((column) =>
            column.kind === 'choice' && column.options[kind]?.fills?.['intakePercent'] !== undefined ? [{ slug, ...column.options[kind].fills }] : [],
          )
        : [],
    ),
  );

// At rest 2 percent (semler-sheep, ewes and does at maintenance), in milk 4 (luling-foundation).
it('lets a doe eat the same in every form, dry or nursing', () => {
  const [dry, nursing] = [fillsOf('doe-dry'), fillsOf('doe')];
  expect(dry.map(({ slug }) => slug).sort()).toEqual(
    ['carrying-capacity', 'days-of-grass', 'forage-on-hand', 'rest-and-moves', 'season', 'standing-feed'].sort(),
  );
  for (const fills of dry) expect(fills, fills.slug).toMatchObject({ weightLb: 120, intakePercent: 2 });
  for (const fills of nursing)
    expect(fills, fills.slug).toMatchObject(
      'nursingPercent' in fills ? { intakePercent: 2, nursingPercent: 4 } : { weightLb: 120, intakePercent: 4 },
    );
  expect(nursing.map(({ slug }) => slug)).toEqual(expect.arrayContaining(dry.map(({ slug }) => slug)));
});
