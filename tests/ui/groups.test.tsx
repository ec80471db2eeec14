import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { PlainGroup } from '../../calculators/kit/screen.ts';
import { type Problem, startTexts, type Texts } from '../../calculators/kit/state.ts';
import { Group } from '../../calculators/ui/Groups.tsx';
import { tables } from '../../calculators/ui/tables.ts';
import kitchenSink from '../kit/kitchenSink.ts';

const start = startTexts(kitchenSink.inputs);
const ground: PlainGroup = { title: 'The ground', inputs: ['fieldAc', 'soil', 'lossPercent'], summary: '{fieldAc} of {soil}, {lossPercent} lost' };
const herd: PlainGroup = { title: 'The herd', inputs: ['herd'], summary: '{herd}' };

interface Drawn {
  readonly group?: PlainGroup;
  readonly texts?: Texts;
  readonly touched?: readonly string[];
  readonly problems?: readonly Problem[];
  readonly origin?: string;
  readonly isEarly?: boolean;
}
const draw = ({ group = ground, texts = start, touched = [], problems = [], origin = 'example', isEarly = false }: Drawn = {}) =>
  render(
    <Group
      id="sink"
      calculator={kitchenSink}
      group={group}
      texts={texts}
      touched={new Set(touched)}
      problems={problems}
      origin={origin}
      isWanting={false}
      system="us"
      whoseOf={() => 'example'}
      canAddRows
      tools={undefined}
      tables={isEarly ? undefined : tables}
      records={undefined}
      onTexts={() => {}}
      onLeave={() => {}}
    />,
  );
const line = (html: string): string =>
  (/<summary>.*<\/summary>/s.exec(html)?.[0] ?? '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
const isOpen = (html: string): boolean => /<details class="group" open/.test(html);

describe('a group of questions', () => {
  it('is one closed line that tells its answers and whose they are', () => {
    expect(line(draw())).toBe('The ground 40 ac of Loam (from the example)');
    expect(line(draw({ group: herd, origin: 'link' }))).toBe('The herd 45 cows of 1,250 lb, nursing, 2 bulls of 1,900 lb (from the link)');
    expect(isOpen(draw())).toBe(false);
  });
  it('holds its answers as text while closed, for paper and for browsers without scripts, and no field', () => {
    const html = draw();
    expect(html).not.toMatch(/<input|<select/);
    expect([...html.matchAll(/<dt>([^<]*)<\/dt><dd>([^<]*)<\/dd>/g)].map(([, asked, told]) => [asked, told?.replace(/\s/g, ' ')])).toEqual([
      ['Field', '40 ac'],
      ['Soil', 'Loam'],
    ]);
  });
  it('asks what applies only', () => {
    const own = draw({ texts: { ...start, soil: 'own' } });
    expect(line(own)).toBe('The ground 40 ac of My own figure, 20 % lost (from the example)');
    expect(draw({ group: { title: 'The loss', inputs: ['lossPercent'] } })).toBe('');
  });
  it('is the reader’s own only when each of its answers is', () => {
    expect(draw({ touched: ['fieldAc'] })).toContain('is-example');
    const own = draw({ touched: ['fieldAc', 'soil'] });
    expect(own).not.toContain('is-example');
    expect(line(own)).toBe('The ground 40 ac of Loam');
  });
  it('names what is still wanted, four at most, in place of half a line', () => {
    expect(line(draw({ texts: { ...start, fieldAc: '' } }))).toBe('The ground Still wanted: Field');
    const many = { title: 'All', inputs: ['rainIn', 'fieldAc', 'meanF', 'startDay', 'soakMin'] };
    const empty = { ...start, ...Object.fromEntries(many.inputs.map((key) => [key, ''])) };
    expect(line(draw({ group: many, texts: empty }))).toBe('All Still wanted: Rain, Field, Mean temperature, First day');
  });
  it('opens itself where one of its answers is wrong, a cell of its table as well, and says so at the field', () => {
    const say = 'Field must be from 0.5 to 10,000 ac.';
    const wrong = draw({ texts: { ...start, fieldAc: '0' }, problems: [{ at: 'fieldAc', say }] });
    expect(isOpen(wrong)).toBe(true);
    expect(wrong).toContain(say);
    expect(wrong).toMatch(/<input id="sink-fieldAc"[^>]*aria-invalid/);
    expect(isOpen(draw({ group: herd, problems: [{ at: 'herd.1.weightLb', say: 'Weight is missing.' }] }))).toBe(true);
    // What draws the table may come later than the fault: the group is open, and its list stands until then.
    const early = draw({ group: herd, isEarly: true, problems: [{ at: 'herd.1.weightLb', say: 'Weight is missing.' }] });
    expect(isOpen(early)).toBe(true);
    expect(early).toContain('group-list');
    expect(early).not.toMatch(/<input/);
    expect(isOpen(draw({ problems: [{ at: 'rainIn', say: 'Rain is missing.' }] }))).toBe(false);
  });
});
