import { describe, expect, it } from 'vitest';
import { blankDraft, officeOf, withValue } from '../../src/office/draft.ts';
import { begun, goneOn, isOther, keptWorks, markOf, saved, swapped, type Works, withData } from '../../src/office/work.ts';
import type { Data } from '../../src/place/ui/edit.ts';
import { anOffice } from './anOffice.ts';

// As a copy reads it from its file.
const office: Data = JSON.parse(JSON.stringify(officeOf(JSON.parse(JSON.stringify(anOffice)))));
const dearer = withValue(office, 'values.hayPrice.highUsdPerTon', 230);
const dearest = withValue(office, 'values.hayPrice.highUsdPerTon', 290);
const blank = blankDraft('2026-09-14');
const typed = (works: Works, name: string): Works => withData(works, (data) => withValue(data, 'head.name', name));
const nameIn = (works: Works, which: 'now' | 'before') => {
  const data = works[which]?.data;
  return data === undefined ? undefined : (JSON.parse(JSON.stringify(data)).head.name as unknown);
};

describe('a mark of a text', () => {
  // Test vectors of FNV-1a, 32 bits, as draft-eastlake-fnv prints them (from memory).
  it.each([
    ['', '811c9dc5'],
    ['a', 'e40c292c'],
    ['foobar', 'bf9cf968'],
  ])('of “%s” is %s', (text, mark) => expect(markOf(text)).toBe(mark));
});

describe('work on an office’s forms', () => {
  it('stays within reach when other work begins, and changes places with it', () => {
    const first = typed(begun({}, blank, undefined), 'First office');
    const second = typed(begun(first, blank, undefined), 'Second office');
    expect([nameIn(second, 'now'), nameIn(second, 'before')]).toEqual(['Second office', 'First office']);
    expect([nameIn(swapped(second), 'now'), nameIn(swapped(second), 'before')]).toEqual(['First office', 'Second office']);
    expect(swapped(swapped(second))).toEqual(second);
  });

  it('gives its place to no other that nobody has touched', () => {
    const first = typed(begun({}, blank, undefined), 'First office');
    const looked = begun(begun(begun(first, dearer, undefined), dearest, undefined), office, undefined);
    expect(nameIn(looked, 'before')).toBe('First office');
    expect(begun(begun({}, dearer, undefined), office, undefined).before?.data).toEqual(dearer);
  });

  it('asks where the copy holds another office than the one that it began from', () => {
    const works = typed(begun({}, office, office), 'Example County office, Main Street');
    const asks = (each: Works, here: Data): boolean => each.now !== undefined && isOther(each.now, here);
    expect(asks(works, office)).toBe(false);
    expect(asks(works, undefined)).toBe(false);
    expect(asks(works, dearer)).toBe(true);
    expect(asks(goneOn(works, dearer), dearer)).toBe(false);
    expect(asks(goneOn(works, dearer), dearest)).toBe(true);
    // Begun where no office was, and with work that an older copy of these pages kept.
    expect(asks(typed(begun({}, office, undefined), 'another'), office)).toBe(true);
    expect(asks({ now: { data: dearer, known: [] } }, office)).toBe(true);
    expect(asks({ now: { data: office, known: [] } }, office)).toBe(false);
  });

  it('does not ask of what was saved from it, nor of what it was saved over', () => {
    let works = typed(begun({}, office, office), 'another');
    for (const each of [dearer, dearest, withValue(dearest, 'head.name', 'one more'), withValue(dearest, 'head.name', 'and one more')])
      works = saved(works, each, office);
    for (const each of [office, dearest]) expect(works.now && isOther(works.now, each), JSON.stringify(each)).toBe(false);
    // Nor does saving answer what was asked.
    const unanswered = saved(typed(begun({}, office, undefined), 'another'), dearer, dearest);
    expect(unanswered.now && isOther(unanswered.now, dearest)).toBe(true);
  });
});

describe('a browser that keeps it', () => {
  const shelf = (most = Number.POSITIVE_INFINITY) => {
    const texts = new Map<string, string>();
    return {
      texts,
      kept: (key: string) => texts.get(key) ?? null,
      keep: (key: string, text: string) => {
        if (text.length > most) return false;
        texts.set(key, text);
        return true;
      },
    };
  };
  const works = typed(begun(typed(begun({}, office, office), 'First office'), blank, office), 'Second office');

  it('gives back both works as they were', () => {
    const at = shelf();
    expect(keptWorks(at).write(works)).toBe(true);
    expect(keptWorks(at).read()).toEqual(works);
  });

  it('finds work that an older copy of these pages kept, and leaves it where that finds it', () => {
    const at = shelf();
    at.texts.set('holdwater-office-draft', JSON.stringify(dearer));
    const found = keptWorks(at).read();
    expect(found).toEqual({ now: { data: dearer, known: [] } });
    keptWorks(at).write(begun(found, office, undefined));
    expect(JSON.parse(at.texts.get('holdwater-office-draft') ?? '')).toEqual(office);
    expect(keptWorks(at).read().before?.data).toEqual(dearer);
  });

  it('begins with nothing where something else lies there', () => {
    for (const text of ['', '{', '5', '[]', 'null', '"a"']) {
      const at = shelf();
      for (const key of ['draft', 'begun', 'before']) at.texts.set(`holdwater-office-${key}`, text);
      expect(keptWorks(at).read(), text).toEqual({});
    }
  });

  it('writes nothing over work that it cannot keep', () => {
    const first = typed(begun({}, office, office), 'First office');
    const full = shelf(JSON.stringify(first.now?.data).length);
    expect(keptWorks(full).write(first)).toBe(true);
    expect(keptWorks(full).write(typed(begun(first, blank, office), 'Second office'))).toBe(false);
    expect(nameIn(keptWorks(full).read(), 'now')).toBe('First office');
  });
});
