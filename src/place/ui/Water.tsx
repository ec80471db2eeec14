import { FieldsView } from './FieldView.tsx';
import { waterGroups } from './fields/water.ts';
import { Fold } from './Part.tsx';
import { PartList } from './PartList.tsx';
import { lineOf } from './told.ts';
import type { PlaceView } from './view.ts';

const all = waterGroups.flatMap(({ fields }) => fields);

export function Water(view: PlaceView) {
  const { place, session, system, isPrinting } = view;
  const onChange = session.change.bind(session);
  return (
    <PartList
      view={view}
      path={['water']}
      items={place.water}
      name={({ name }) => name}
      says={(each) => lineOf(each, all, ['supply'], system)}
      addWords="Add a place with water"
      emptyWords="No water yet."
      make={(id) => ({ id, name: `Water ${place.water.length + 1}` })}
      draw={(point, path, called) =>
        waterGroups.map(({ title, fields }) => {
          const drawn = () => <FieldsView id={point.id} record={point} fields={fields} system={system} path={path} of={called} onChange={onChange} />;
          if (title === undefined) return drawn();
          return (
            <Fold key={title} title={title} says={lineOf(point, fields, fields.map(({ at }) => at).slice(0, 2), system)} isPrinting={isPrinting}>
              {drawn}
            </Fold>
          );
        })
      }
    />
  );
}
