import { FieldsView } from './FieldView.tsx';
import { choice } from './fields/field.ts';
import { layerFields, paddockFields, pastureFirst, pastureGroups, soilFields } from './fields/ground.ts';
import { groundWord } from './groundWord.ts';
import { Fold } from './Part.tsx';
import { PartList } from './PartList.tsx';
import { lineOf } from './told.ts';
import type { PlaceView } from './view.ts';

/** `Pasture 3`, where nobody has called one so. */
const freeName = (word: string, taken: readonly { readonly name: string }[]): string => {
  const names = new Set(taken.map(({ name }) => name));
  let number = taken.length + 1;
  while (names.has(`${word} ${number}`)) number += 1;
  return `${word} ${number}`;
};

export function Ground(view: PlaceView) {
  const { place, session, system, isPrinting } = view;
  const onChange = session.change.bind(session);
  const shared = { system, onChange };
  const word = groundWord(place);
  // A pasture names its soil; soils go by their own names.
  const soils = Object.fromEntries(place.soils.map(({ id, name }) => [id, name]));
  const soilField = choice('soilId', 'Soil', Object.keys(soils), soils, {
    help: place.soils.length === 0 ? 'Add a soil below first; then choose it here.' : 'From the soils below.',
  });
  return (
    <>
      <h3>Pastures</h3>
      <PartList
        view={view}
        path={['pastures']}
        items={place.pastures}
        name={({ name }) => name}
        says={(each) => lineOf(each, [...pastureFirst, ...pastureGroups.flatMap(({ fields }) => fields)], ['areaAc', 'use', 'forage'], system)}
        addWords="Add a pasture"
        emptyWords="No pasture yet."
        make={(id) => ({ id, name: freeName('Pasture', place.pastures), isCounted: true, paddocks: [] })}
        also={[place.soils]}
        draw={(pasture, path, called) => (
          <>
            <FieldsView {...shared} id={pasture.id} record={pasture} fields={[...pastureFirst, soilField]} path={path} of={called} />
            {pastureGroups.map(({ title, fields }) => (
              <Fold key={title} title={title} says={lineOf(pasture, fields, fields.map(({ at }) => at).slice(0, 4), system)} isPrinting={isPrinting}>
                {() => <FieldsView {...shared} id={pasture.id} record={pasture} fields={fields} path={path} of={called} />}
              </Fold>
            ))}
            <Fold title={word.heads} says={pasture.paddocks.length === 0 ? '' : String(pasture.paddocks.length)} isPrinting={isPrinting}>
              {() => (
                <PartList
                  view={view}
                  path={[...path, 'paddocks']}
                  items={pasture.paddocks}
                  name={({ name }) => name}
                  says={(each) => lineOf(each, paddockFields, ['areaAc'], system)}
                  addWords={`Add a ${word.one} of ${called}`}
                  make={(id) => ({ id, name: freeName(called, pasture.paddocks) })}
                  draw={(paddock, at, name) => <FieldsView {...shared} id={paddock.id} record={paddock} fields={paddockFields} path={at} of={name} />}
                />
              )}
            </Fold>
            <p>
              <small>Taken away, its name stays in visits and in the record, but sums by area no longer count it.</small>
            </p>
          </>
        )}
      />
      <h3>Soils</h3>
      <PartList
        view={view}
        path={['soils']}
        items={place.soils}
        name={({ name }) => name}
        says={(each) => lineOf(each, soilFields, ['texture', 'depthIn'], system)}
        addWords="Add a soil"
        emptyWords="No soil yet."
        make={(id) => ({ id, name: freeName('Soil', place.soils) })}
        draw={(soil, path, called) => (
          <>
            <FieldsView {...shared} id={soil.id} record={soil} fields={soilFields} path={path} of={called} />
            <Fold title="Layers, from the top down" says={soil.layers === undefined ? '' : String(soil.layers.length)} isPrinting={isPrinting}>
              {() => (
                <PartList
                  view={view}
                  path={[...path, 'layers']}
                  items={soil.layers ?? []}
                  name={(_, index) => `Layer ${index + 1}`}
                  says={(each) => lineOf(each, layerFields, ['thicknessIn', 'texture'], system)}
                  addWords={`Add a layer of ${called}`}
                  make={(id) => ({ id })}
                  draw={(layer, at, name) => (
                    <FieldsView {...shared} id={layer.id ?? name} record={layer} fields={layerFields} path={at} of={`${called}, ${name}`} />
                  )}
                />
              )}
            </Fold>
          </>
        )}
      />
    </>
  );
}
