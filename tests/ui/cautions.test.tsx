import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import stormRunoff from '../../calculators/catalog/storm-runoff/definition.ts';
import type { Outcome, Said } from '../../calculators/kit/define.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { Cautions, cautionsHeld } from '../../calculators/ui/Cautions.tsx';
import { runSide } from '../../calculators/ui/sides.ts';

const said = (lead: string, life = false): Said => ({ lead, life, say: `${lead} The whole of it.`, source: 'common practice' });
const start = runSide(stormRunoff, startTexts(stormRunoff.inputs), 'us').outcome;
if (!start) throw new Error('the example does not compute');
const holding = (...cautions: readonly Said[]): Outcome => ({ ...start, cautions });
const [slow, deep, wide] = [said('A slow one.'), said('Deep water drowns.', true), said('Ditches cave in.', true)];
const titles = ['High bench', 'That'] as const;
const summary = (html: string): string => /<summary>.*<\/summary>/s.exec(html)?.[0] ?? '';

describe('cautions that hold', () => {
  it('puts what can cost a life first, whatever the order', () => {
    expect(cautionsHeld(holding(slow, deep), null, titles).map(({ lead }) => lead)).toEqual([deep.lead, slow.lead]);
  });
  it('names the side for which one holds, and no side where both have it', () => {
    const held = cautionsHeld(holding(slow, deep), holding(deep, wide), titles);
    expect(held.map(({ lead, side }) => [lead, side])).toEqual([
      [deep.lead, ''],
      [wide.lead, 'That'],
      [slow.lead, 'High bench'],
    ]);
  });
});

describe('the bar above the answer', () => {
  it('never folds one about life, and counts the others', () => {
    const html = render(<Cautions outcome={holding(slow, deep, wide)} other={null} titles={titles} />);
    expect(summary(html)).toContain(deep.lead);
    expect(summary(html)).toContain(wide.lead);
    expect(summary(html)).not.toContain(slow.lead);
    expect(summary(html)).toContain('why, and 1 more caution');
    for (const each of [slow, deep, wide]) expect(html).toContain(each.say);
  });
  it('leads with one where none is about life', () => {
    const html = render(<Cautions outcome={holding(slow, said('Another.'), said('A third.'))} other={null} titles={titles} />);
    expect(summary(html)).toContain(slow.lead);
    expect(summary(html)).not.toContain('Another.');
    expect(summary(html)).toContain('why, and 2 more cautions');
  });
  it('begins with the name of the side', () => {
    const html = render(<Cautions outcome={holding()} other={holding(deep)} titles={titles} />);
    expect(summary(html)).toMatch(/That:\s*<\/b>Deep water drowns\./);
  });
  it('is not there when nothing holds', () => {
    expect(render(<Cautions outcome={holding()} other={null} titles={titles} />)).toBe('');
    expect(render(<Cautions outcome={null} other={null} titles={titles} />)).toBe('');
  });
});
