import { FieldGroups } from './FieldGroups.tsx';
import { toolGroups } from './fields/tools.ts';
import type { PlaceView } from './view.ts';

export const OwnTools = (view: PlaceView) => (
  <>
    <p>Measured once, with a tape. Forms for field tests then open with your own sizes.</p>
    <FieldGroups view={view} groups={toolGroups} id="tools" />
  </>
);
