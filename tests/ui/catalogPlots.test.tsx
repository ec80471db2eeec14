import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { allPictures, type PlainPicture } from '../../calculators/kit/pictures.ts';
import { Picture } from '../../calculators/ui/pictures/Picture.tsx';
import { otherTexts, runSide } from '../../calculators/ui/sides.ts';
import { sideTitles } from '../../calculators/ui/sideTitles.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { calculators } from '../support/catalog.ts';
import { attribute, crowded, misnamed, unescaped, widthsPx, wordsIn } from './drawnPlots.tsx';

const plotKinds = ['shares', 'spans', 'bars', 'lines'];
const plotsOf = (each: Calculator): readonly PlainPicture[] => allPictures(each).filter(({ kind }) => plotKinds.includes(kind));
const plots = calculators.filter((each) => plotsOf(each).length > 0);
/** All plots of a calculator, one after the other. */
const drawReal = (each: Calculator, query: string, widthPx: number, system: UnitSystem = 'us'): readonly string[] => {
  const { form } = fromLink(each, query);
  const others = otherTexts(each, form);
  const [mine, theirs] = [runSide(each, form.this, 'us').outcome, others && runSide(each, others, 'us').outcome];
  if (!mine) throw new RangeError(`${each.slug}: ${query} does not compute`);
  return plotsOf(each).map((picture) =>
    render(
      <Picture
        calculator={each}
        picture={picture}
        outcome={mine}
        other={theirs}
        titles={sideTitles(each, form.this, others, 'us')}
        system={system}
        id="p"
        widthPx={widthPx}
      />,
    ),
  );
};
/** Queries that strain a drawing: the example, its other ends, and a pair. */
const strained: Readonly<Record<string, readonly string[]>> = {
  'carrying-capacity': ['that.go=2026-08-20'],
  'rest-and-moves': ['paddock=40&stay=2d', 'paddock=60&stay=1d', 'paddock=2', 'that.paddock=14&that.stay=4d'],
  'rain-record': ['window=1mo', 'window=12mo', 'window=24mo', 'until=2025-08-12&window=3mo'],
  'hay-to-grass': ['on-hand=none', 'that.feeder=cone'],
  'early-weaning': ['calf-goes=bought-feed', 'that.calf-goes=own-feed'],
  'feed-hazards': ['other-feed=tested', 'other-feed=tested&that.pregnant=no'],
  'feed-or-sell': ['that.calf-sold=no'],
  'standing-feed': ['that.strip=14d'],
};

describe.each(plots)('$slug', (each) => {
  it.each(widthsPx)('lets no words meet or leave its plot at %s px', (widthPx) => {
    for (const query of ['', ...(strained[each.slug] ?? [])])
      for (const markup of (['us', 'si'] as const).flatMap((system) => drawReal(each, query, widthPx, system))) {
        expect(markup).not.toMatch(/NaN|Infinity|undefined|height="-|width="-/);
        expect(crowded(markup), query).toEqual([]);
        expect(misnamed(markup), query).toEqual([]);
      }
  });
  it('tells in its name each figure that is drawn', () => {
    for (const markup of drawReal(each, '', 376)) {
      const said = unescaped(attribute(/<svg[^>]* role="img"[^>]*>/.exec(markup)?.[0] ?? '', 'aria-label'));
      const figures = wordsIn(markup).filter(({ size }) => size === 'figure');
      const amounts = figures.flatMap(({ text }) => text.match(/[\d,]*\d(?:\.\d+)?/g) ?? []);
      for (const told of amounts) expect(said, told).toContain(told);
    }
  });
});
it('names to listeners what stands across a plot, with its unit where a number has one', () => {
  const said = (slug: string) =>
    plots
      .filter((each) => each.slug === slug)
      .flatMap((each) => drawReal(each, '', 376))
      .map((markup) => unescaped(attribute(/<svg[^>]* role="img"[^>]*>/.exec(markup)?.[0] ?? '', 'aria-label')))
      .join(' ');
  expect(said('feed-or-sell')).toMatch(/you: \S+ at buy-back price \$[\d,]+; /);
  expect(said('ring-test')).toMatch(/ at pouring 1 to \S+ in an hour at pouring \d/);
  expect(said('soil-loss')).toMatch(/ at covered ground 0 % to /);
});
it('draws the first pictures that fourteen calculators have', () => {
  const kinds = Object.fromEntries(plots.map((each) => [each.slug, plotsOf(each)[0]?.kind]));
  expect(kinds).toMatchObject({
    'slake-test': 'shares',
    'forage-on-hand': 'spans',
    'herd-intake': 'shares',
    'carrying-capacity': 'lines',
    'rest-and-moves': 'spans',
    'standing-feed': 'lines',
    'sown-feed': 'shares',
    'rain-record': 'bars',
    'decision-dates': 'spans',
    'hay-to-grass': 'shares',
    'hay-value': 'shares',
    'feed-or-sell': 'lines',
    'early-weaning': 'shares',
    'feed-hazards': 'shares',
  });
});
it('draws no share of a feed where none is allowed to be named', () => {
  const hazards = plots.find(({ slug }) => slug === 'feed-hazards');
  if (!hazards) throw new RangeError('no feed-hazards');
  for (const query of [
    '',
    'other-feed=tested',
    'other-feed=tested&forage-nitrate=no3-n&nitrate-ppm=20000',
    'other-feed=tested&forage-nitrate=no3-n&nitrate-ppm=50',
  ]) {
    const { values } = runQuery(hazards, query);
    expect(drawReal(hazards, query, 376).some(Boolean), query).toBe(values['mixing'] === 'share');
  }
});
