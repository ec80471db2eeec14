import { useEffect, useState } from 'preact/hooks';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import type { Result } from '../model/result.ts';
import type { Visit } from '../model/visit.ts';
import { resultKind, visitKind } from '../store/visitKinds.ts';
import { groundWords } from '../visit/blocks.ts';
import { type Compared, compareResults, differences, unlikeWords } from '../visit/compare.ts';
import { pastureNames, visitDay } from '../visit/visitWords.ts';
import { definitionOf } from './definitions.ts';
import { useKept } from './keptRecords.ts';
import type { PlaceView } from './view.ts';
import { partsIn } from './views.ts';

interface Pair {
  readonly key: string;
  readonly where: string;
  readonly compared: Compared;
}
const sharesGround = (one: Result, other: Result): boolean =>
  (one.pastureIds.length === 0 && other.pastureIds.length === 0) || one.pastureIds.some((id) => other.pastureIds.includes(id));

/** Tests that both visits made on the same ground. */
async function pairsOf(place: Place, [earlier, later]: readonly [Visit, Visit], results: readonly Result[], system: PlaceView['system']) {
  const of = ({ results: kept }: Visit): readonly Result[] => kept.flatMap(({ id }) => results.find((each) => each.id === id) ?? []);
  const pairs: Pair[] = [];
  for (const one of of(earlier)) {
    const others = of(later).filter((each) => each.slug === one.slug && sharesGround(one, each));
    if (others.length === 0) continue;
    try {
      const calculator = await definitionOf(one.slug);
      const found = others.flatMap((other): Pair[] => {
        const compared = compareResults(calculator, [one, earlier], [other, later], system);
        const shared = one.pastureIds.filter((id) => other.pastureIds.includes(id));
        return compared === undefined ? [] : [{ key: one.id, where: pastureNames(place, shared), compared }];
      });
      // Of two tests of one ground, such as crumbs from under plants and from bare spots, the one that can be held against this.
      pairs.push(...[found.find(({ compared }) => compared.change !== undefined) ?? found[0] ?? []].flat());
    } catch (error) {
      // A calculator of another edition: its words stand in its visit.
      console.info(error);
    }
  }
  return pairs;
}

/** Both days' readings on one line each, the later below. */
function Plot({ compared, days }: { readonly compared: Compared; readonly days: readonly [string, string] }) {
  const { earlier, later, tell, isRatio } = compared;
  const all = [...earlier, ...later];
  const at = (value: number): number => (isRatio ? Math.log(Math.max(value, 1e-6)) : value);
  const [low, high] = [Math.min(...all.map(at)), Math.max(...all.map(at))];
  const x = (value: number): number => (high === low ? 150 : 20 + ((at(value) - low) / (high - low)) * 260);
  const row = (readings: readonly number[], y: number) =>
    readings.map((reading, index) => <circle key={String(index)} cx={x(reading)} cy={y} r={6} />);
  return (
    <svg
      class="visits-plot"
      viewBox="0 0 300 120"
      role="img"
      aria-label={`${days[0]}: ${earlier.map(tell).join(', ')}. ${days[1]}: ${later.map(tell).join(', ')}.`}
    >
      <text x={4} y={16}>
        {days[0]}
      </text>
      <line x1={10} x2={290} y1={34} y2={34} />
      {row(earlier, 34)}
      <text x={4} y={66}>
        {days[1]}
      </text>
      <line x1={10} x2={290} y1={84} y2={84} />
      {row(later, 84)}
      <text x={10} y={112}>
        {tell(Math.min(...all))}
      </text>
      <text x={290} y={112} text-anchor="end">
        {tell(Math.max(...all))}
      </text>
    </svg>
  );
}

/** Words in the middle over a point still stand within the picture. */
const inside = (x: number): number => Math.min(Math.max(x, 40), 260);
/** The range of the change against no change at all: whether the bar reaches it is what decides. */
function RangePlot({ compared }: { readonly compared: Compared }) {
  const { change, isRatio } = compared;
  if (change === undefined || change.isBoundless === true) return null;
  const nothing = isRatio ? 1 : 0;
  const at = (value: number): number => (isRatio ? Math.log(value) : value);
  const ends = [change.low, change.high, nothing].map(at);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const x = (value: number): number => (high === low ? 150 : 30 + ((at(value) - low) / (high - low)) * 240);
  return (
    <svg class="visits-plot range-plot" viewBox="0 0 300 84" role="img" aria-label={`Range of the change: ${change.words}.`}>
      <text x={inside(x(nothing))} y={14} text-anchor="middle">
        no change
      </text>
      <line x1={x(nothing)} x2={x(nothing)} y1={20} y2={74} stroke-dasharray="4 3" />
      <text x={inside(x(change.high))} y={34} text-anchor="middle">
        {change.highWords}
      </text>
      <rect x={x(change.low)} y={42} width={Math.max(x(change.high) - x(change.low), 2)} height={10} />
      <circle cx={x(change.value)} cy={47} r={6} />
      <text x={inside(x(change.low))} y={70} text-anchor="middle">
        {change.lowWords}
      </text>
    </svg>
  );
}

const groundLine = (visit: Visit, system: UnitSystem): string => `ground ${groundWords(visit, system) || 'not told'}`;

/** `#/compare/ID/ID`: two visits side by side. */
export function Compare(view: PlaceView) {
  const { session, place, system } = view;
  const ids = partsIn(location.hash);
  const visits = useKept(session, visitKind, ({ placeId }) => placeId === place.id, ids);
  const [one, other] = (visits ?? []).toSorted((a, b) => a.day.localeCompare(b.day));
  const results = useKept(
    session,
    resultKind,
    () => true,
    [one, other].flatMap((each) => each?.results.map(({ id }) => id) ?? []),
  );
  const [pairs, setPairs] = useState<readonly Pair[] | undefined>(undefined);
  useEffect(() => {
    if (one && other && results) void pairsOf(place, [one, other], results, system).then(setPairs);
  }, [one?.rev, other?.rev, results, system]);
  if (visits === undefined) return null;
  if (!one || !other)
    return (
      <p>
        Two visits are needed, and they are not both kept here. <a href="#/visits">All visits of {place.name}</a>.
      </p>
    );
  const days = [visitDay(one, visits), visitDay(other, visits)] as const;
  const unlike = unlikeWords(differences(one, other));
  return (
    <div class="compare">
      <p>
        <a href={`#/visit/${one.id}`}>{days[0]}</a>: {groundLine(one, system)}. <a href={`#/visit/${other.id}`}>{days[1]}</a>:{' '}
        {groundLine(other, system)}.
      </p>
      {unlike.length > 0 && <p>{unlike.join(' ')}</p>}
      {pairs?.length === 0 && (
        <p class="none-yet">
          No test was made on the same ground in both visits. Rings, slake tests, cores and counts of ground cover can be compared.
        </p>
      )}
      {pairs?.map(({ key, where, compared }) => (
        <section key={key}>
          <h3>{where === '' ? compared.title : `${where}: ${compared.title}`}</h3>
          <p>
            <b>{compared.verdict}</b> {compared.label}: {compared.sides}
            {compared.change === undefined ? '.' : `; ${compared.change.words}.`}
          </p>
          <Plot compared={compared} days={days} />
          <RangePlot compared={compared} />
          {compared.besides.length > 0 && <p>{compared.besides.join(' ')}</p>}
          {compared.change?.usual !== undefined && <p>{compared.change.usual}</p>}
        </section>
      ))}
    </div>
  );
}
