import { localDay } from '../../../calculators/units/days.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { Changes } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import { boughtFields, priceFields, stackFields } from './fields/feed.ts';
import { PartList } from './PartList.tsx';
import { lineOf } from './told.ts';
import type { PlaceView } from './view.ts';

/** Whoever tells how many bales there are has counted them now; the day can be set back right below. */
export const withDay = (changes: Changes, today: string): Changes =>
  changes.flatMap((change) =>
    change.path.at(-1) === 'baleCount' && change.path.at(-2) !== 'typed'
      ? [change, { path: [...change.path.slice(0, -1), 'countedDay'], to: change.to === undefined ? undefined : today }]
      : [change],
  );

export function Feed(view: PlaceView) {
  const { place, session, system } = view;
  const shared = { system, onChange: session.change.bind(session) };
  const onStack = (changes: Changes): void => session.change(withDay(changes, isoDay(localDay(session.now))));
  return (
    <>
      <h3>Hay on hand</h3>
      <PartList
        view={view}
        path={['hay', 'stacks']}
        items={place.hay?.stacks ?? []}
        name={({ name }, index) => name ?? `Stack ${index + 1}`}
        says={(each) =>
          [lineOf(each, stackFields, ['baleCount'], system), lineOf(each, stackFields, ['baleLb', 'storedAs'], system)]
            .filter(Boolean)
            .join(' bales, ')
        }
        addWords="Add a stack"
        emptyWords="No hay yet."
        make={(id) => ({ id })}
        draw={(stack, path, called) => (
          <FieldsView {...shared} id={stack.id} record={stack} fields={stackFields} path={path} of={called} onChange={onStack} />
        )}
      />
      <h3>Hay that you buy, and how you feed</h3>
      <FieldsView {...shared} id="bought" record={place} fields={boughtFields} path={[]} />
      <h3>Prices</h3>
      <p>Forms tell the day on which you saw them. Look again before you decide by them.</p>
      <FieldsView {...shared} id="prices" record={place} fields={priceFields} path={[]} />
    </>
  );
}
