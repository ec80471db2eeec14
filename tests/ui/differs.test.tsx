import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { startTexts } from '../../calculators/kit/state.ts';
import { Differs } from '../../calculators/ui/Differs.tsx';
import type { SideNames } from '../../calculators/ui/formState.ts';
import { tables } from '../../calculators/ui/tables.ts';
import kitchenSink from '../kit/kitchenSink.ts';

const side = {
  id: 'sink',
  calculator: kitchenSink,
  texts: startTexts(kitchenSink.inputs),
  problems: [],
  system: 'us',
  whoseOf: () => undefined,
  canAddRows: true,
  tools: undefined,
  tables,
  records: undefined,
  onTexts: () => {},
  onLeave: () => {},
} as const;
const draw = (names: SideNames): string =>
  render(
    <Differs
      mine={side}
      theirs={{ ...side, id: 'sink-that' }}
      apart={[['bareCount'], ['herd']]}
      names={names}
      onNames={() => {}}
      onLetDiffer={() => {}}
    />,
  );
const bare = (html: string): string => html.replace(/<[^>]+>/g, '');
const labels = (html: string): readonly string[] => [...html.matchAll(/<label for="[^"]*">(.*?)<\/label>/g)].map(([, text = '']) => bare(text));
const buttons = (html: string): readonly string[] =>
  [...html.matchAll(/<button([^>]*)>(.*?)<\/button>/g)].map(([, tag = '', text = '']) => /aria-label="([^"]*)"/.exec(tag)?.[1] ?? bare(text));

describe('what is asked of two sides', () => {
  it('is told with its side to whoever hears it, on both sides alike', () => {
    const html = draw(['', '']);
    for (const of of ['This side', 'That side']) {
      expect(labels(html)).toContain(`${of}: Bare steps`);
      expect(buttons(html)).toEqual(expect.arrayContaining([`Less: ${of}: Bare steps`, `More: ${of}: Bare steps`]));
      expect(buttons(html)).toContain(`Change ${of}, Kind of stock 1`);
    }
  });
  it('goes by the names of the sides, where they have any', () => {
    const html = draw(['Short', 'Tall']);
    expect(labels(html)).toEqual(expect.arrayContaining(['Short: Bare steps', 'Tall: Bare steps']));
    expect(html).not.toMatch(/This side|That side/);
  });
  it('has no two buttons of the same words', () => {
    const all = buttons(draw(['', 'Tall']));
    expect(new Set(all).size).toBe(all.length);
  });
});
