import type { Place } from '../model/place.ts';
import { FieldsView } from './FieldView.tsx';
import type { PlaceField } from './fields/field.ts';
import type { PlaceView } from './view.ts';

interface GroupsProps {
  readonly view: PlaceView;
  readonly groups: readonly { readonly title: string; readonly fields: readonly PlaceField[]; readonly problem?: (place: Place) => string }[];
  readonly id: string;
}
/** Fields of the place itself, under a heading each. */
export function FieldGroups({ view, groups, id }: GroupsProps) {
  const { place, session, system } = view;
  return (
    <>
      {groups.map(({ title, fields, problem }) => (
        <section key={title}>
          <h3>{title}</h3>
          <FieldsView id={id} record={place} fields={fields} system={system} path={[]} onChange={(changes) => session.change(changes)} />
          {problem && (
            <p class="problem" role="status">
              {problem(place)}
            </p>
          )}
        </section>
      ))}
    </>
  );
}
