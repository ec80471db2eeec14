// An office fills in inches, pounds, acres and dollars, in whatever units its own forms stand: each field says so where it is typed, and on paper.
import render from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { countedIn, type OfficeField } from '../../src/office/model/field.ts';
import { officeSections } from '../../src/office/model/fields.ts';
import { type Filling, OfficeFieldView } from '../../src/office/ui/OfficeFields.tsx';
import { toldText } from '../../src/office/ui/Steps.tsx';

const counted = officeSections.flatMap(({ at, fields }) => fields.flatMap((field) => (countedIn(field) === '' ? [] : [{ at, field }])));
const nothing = (): void => undefined;
const filling: Filling = {
  data: {},
  wrongs: [],
  isTold: () => false,
  tries: 0,
  today: '2026-09-14',
  put: nothing,
  replaceRows: nothing,
  leave: nothing,
};
const drawn = (field: OfficeField): string => render(<OfficeFieldView field={field} path="values.a" of={undefined} filling={filling} />);
const unitOf: readonly (readonly [key: RegExp, unit: RegExp])[] = [
  [/PerTon$/, /^dollars a ton$/],
  [/PerCwt$/, /^dollars a hundredweight$/],
  [/PerLoad$/, /^dollars a load$/],
  [/Usd$/, /^dollars a head$/],
  [/In\.\d$|^inches$/, /^inches$/],
  [/PerDay$/, /^inches a day$/],
  [/LbPerAc(?:\.\d)?$/, /^pounds an acre$/],
  [/Days$/, /^days$/],
  [/percent/i, /^percent/],
  [/^(?:low|likely|high)$/, /^R in US units$/],
];

describe('each number that an office types', () => {
  it.each(counted.map(({ at, field }) => [`${at}.${field.at}`, field] as const))('%s says its unit beside its field', (_, field) => {
    const unit = unitOf.find(([key]) => key.test(field.at))?.[1];
    expect(countedIn(field)).toMatch(unit ?? /^no unit is known$/);
    const hint = /<small class="field-hint"[^>]*>(.*?)<\/small>|<span class="unit-words">\((.*?)\)/.exec(drawn(field));
    expect((hint?.[1] ?? hint?.[2] ?? '').toLowerCase()).toContain(countedIn(field).toLowerCase());
  });
  it('says it beside what else is said of it', () => {
    const [{ field } = {}] = counted;
    if (field === undefined) throw new RangeError('no number');
    expect(drawn({ ...field, help: 'Of the last sale.' })).toContain('Dollars a ton, such as 165. Of the last sale.');
  });
  it('is told with its unit on paper', () => {
    const told = (key: string, value: Parameters<typeof toldText>[1]): string | undefined => {
      const found = counted.find(({ field }) => field.at === key);
      return found && toldText(found.field, value);
    };
    expect([told('startIn.0', 8), told('normalLbPerAc', 4300), told('startIn.0', undefined)]).toEqual(['8 inches', '4300 pounds an acre', '']);
    expect(told('inches', [2.4, null, 3.1])).toBe('2.4, –, 3.1 inches');
  });
});
