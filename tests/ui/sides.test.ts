import { afterEach, expect, it, vi } from 'vitest';
import carryingCapacity from '../../calculators/catalog/carrying-capacity/definition.ts';
import coverCount from '../../calculators/catalog/cover-count/definition.ts';
import herdIntake from '../../calculators/catalog/herd-intake/definition.ts';
import packedSoil from '../../calculators/catalog/packed-soil/definition.ts';
import rainDemonstration from '../../calculators/catalog/rain-demonstration/definition.ts';
import restAndMoves from '../../calculators/catalog/rest-and-moves/definition.ts';
import slakeTest from '../../calculators/catalog/slake-test/definition.ts';
import storm from '../../calculators/catalog/storm-runoff/definition.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { noteOf } from '../../calculators/kit/note.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { setApart } from '../../calculators/ui/apart.ts';
import { csvOf } from '../../calculators/ui/pictures/stripCsv.ts';
import { runSide } from '../../calculators/ui/sides.ts';
import { sideTitles } from '../../calculators/ui/sideTitles.ts';
import { calculatorOf } from '../support/catalog.ts';

afterEach(() => {
  vi.restoreAllMocks();
});

it('says so when a calculation fails, and shows no result', () => {
  const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const texts = startTexts(storm.inputs);
  expect(runSide(storm, texts, 'us').outcome).not.toBeNull();
  const failing = {
    ...storm,
    run: () => {
      throw new RangeError('a fault of ours');
    },
  };
  const { outcome, problems } = runSide(failing, texts, 'us');
  expect(outcome).toBeNull();
  expect(problems.map(({ say }) => say)).toEqual([expect.stringContaining('The fault is in this page')]);
  expect(told).toHaveBeenCalledOnce();
});

const titlesOf = (query: string, calculator: Calculator = restAndMoves): readonly [string, string] => {
  const { form } = fromLink(calculator, query);
  return sideTitles(calculator, form.this, form.that, 'us');
};

it('names two things that differ, and counts the rest', () => {
  expect(titlesOf('paddock=8&that.paddock=16')).toEqual(['paddocks today 8', 'paddocks today 16']);
  expect(titlesOf('paddock=8&stay=4d&that.paddock=16&that.stay=2d')).toEqual([
    'paddocks today 8, 4 days a herd stays in one',
    'paddocks today 16, 2 days a herd stays in one',
  ]);
  expect(titlesOf('paddock=8&stay=4d&herd=1&that.paddock=16&that.stay=2d&that.herd=2')[1]).toMatch(/, and 1 more$/);
  expect(titlesOf('paddock=8&that=same')).toEqual(['', '']);
  const { form } = fromLink(carryingCapacity, 'go=2026-07-10&that.go=2026-08-10');
  expect(sideTitles(carryingCapacity, form.this, form.that, 'us')[1]).toBe('day by which they could go Aug 10, 2026');
});

it('says a unit once where the question is called by it', () => {
  expect(titlesOf('herd.count=45&that.herd.count=30', calculatorOf('hay-to-grass'))).toEqual(['45 head', '30 head']);
  expect(titlesOf('that.can-go=40', calculatorOf('days-of-grass'))).toEqual(['10 head that could leave', '40 head that could leave']);
});

it('names no side by what was read or counted there', () => {
  const slaked = 'samples.seen=by-5,by-5,by-30&that.samples.seen=most,most,half';
  expect(titlesOf(slaked, slakeTest)).toEqual(['', '']);
  expect(titlesOf(`spot=bare&${slaked}&that.spot=plants`, slakeTest)).toEqual(['In bare spots', 'Under plants']);
  expect(titlesOf('plant=40&bare=60&that.plant=80&that.bare=20', coverCount)).toEqual(['', '']);
  expect(titlesOf('cover=bare&runoff=2600ml&that.cover=rested-sod&that.runoff=300ml&that.through=700ml', rainDemonstration)).toEqual([
    'Bare or trampled ground',
    'Sod rested between grazings, thick, dead grass under it',
  ]);
  // Rows that both sides share are asked of a management.
  expect(titlesOf('herd.count=45,2&that.herd.count=30,2', herdIntake)[1]).toMatch(/^30 head$/);
});

it('sets apart what stands open of the management, readings and what differs', () => {
  const apartOf = (calculator: Calculator, query = 'that=same', differs: readonly string[] = []) => {
    const { form } = fromLink(calculator, query);
    return setApart(calculator, form.this, form.that ?? form.this, differs);
  };
  expect(apartOf(rainDemonstration)).toEqual(['cover', 'ran', 'firstRunS', 'runoffMl', 'throughMl']);
  expect(apartOf(packedSoil), 'a table of which one column is asked').toEqual(['cores', 'probe']);
  expect(apartOf(storm)).toEqual(['groundCoverPercent', 'grazing']);
  expect(apartOf(storm, 'that.cover=row-crop', ['woodsFloor'])).toEqual(expect.arrayContaining(['cover', 'woodsFloor']));
});

it('heads both parts of a note by what the sides are called or differ in, and else by which side it is', () => {
  const { outcome } = runSide(storm, startTexts(storm.inputs), 'us');
  if (!outcome) throw new Error('the example does not compute');
  const heads = (titles?: readonly [string, string]) =>
    noteOf(storm, outcome, outcome, titles)
      .split('\n')
      .map((line) => line.split(':')[0]);
  expect(heads(['Low bench', '8 paddocks'])).toEqual(['Low bench', '8 paddocks']);
  expect([heads(['', '']), heads()]).toEqual([
    ['This', 'That'],
    ['This', 'That'],
  ]);
});

it('names the side above each table that is saved of it', () => {
  const { outcome } = runSide(carryingCapacity, startTexts(carryingCapacity.inputs), 'us');
  if (!outcome) throw new Error('the example does not compute');
  const names = (side: string) =>
    csvOf(carryingCapacity, outcome, 'us', side)
      .split('\n')
      .filter((line) => line.includes('Year beside year'));
  expect(names('')).toEqual(['"Year beside year, whole season"']);
  expect(names('Sold early')).toEqual(['"Year beside year, whole season: Sold early"']);
});
