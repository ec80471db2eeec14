import { FieldsView } from './FieldView.tsx';
import { stockFields } from './fields/stock.ts';
import { groupName } from './holds.ts';
import { PartList } from './PartList.tsx';
import { lineOf } from './told.ts';
import type { PlaceView } from './view.ts';

export function Stock(view: PlaceView) {
  const { place, session, system } = view;
  return (
    <>
      <p>
        One line for each kind of stock that grazes. Pairs are cows with a day by which half are born; their calves ride along until they are weaned.
      </p>
      <PartList
        view={view}
        path={['herd']}
        items={place.herd}
        name={groupName}
        says={(each) => lineOf(each, stockFields, ['countHead', 'weightLb'], system)}
        addWords="Add a kind of stock"
        emptyWords="No stock yet."
        make={(id) => ({ id, kind: 'cow' })}
        draw={(group, path, called) => (
          <FieldsView
            id={group.id}
            record={group}
            fields={stockFields}
            system={system}
            path={path}
            of={called}
            onChange={(changes) => session.change(changes)}
          />
        )}
      />
    </>
  );
}
