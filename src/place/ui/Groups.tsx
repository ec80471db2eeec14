import { FieldsView } from './FieldView.tsx';
import type { PlaceField } from './fields/field.ts';
import { seasonGroups } from './fields/season.ts';
import { toolGroups } from './fields/tools.ts';
import { StationMonths } from './Months.tsx';
import type { PlaceView } from './view.ts';

type Group = { readonly title: string; readonly fields: readonly PlaceField[] };
function Groups({ view, groups, id }: { readonly view: PlaceView; readonly groups: readonly Group[]; readonly id: string }) {
  const { place, session, system } = view;
  return (
    <>
      {groups.map(({ title, fields }) => (
        <section key={title}>
          <h3>{title}</h3>
          <FieldsView id={id} record={place} fields={fields} system={system} path={[]} onChange={(changes) => session.change(changes)} />
        </section>
      ))}
    </>
  );
}
export const Season = (view: PlaceView) => (
  <>
    <Groups view={view} groups={seasonGroups} id="season" />
    <h3>Rain by month</h3>
    <StationMonths {...view} />
  </>
);
export const OwnTools = (view: PlaceView) => (
  <>
    <p>Measured once, with a tape. Forms for field tests then open with your own sizes.</p>
    <Groups view={view} groups={toolGroups} id="tools" />
  </>
);
