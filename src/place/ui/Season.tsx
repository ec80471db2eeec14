import { FieldGroups } from './FieldGroups.tsx';
import { seasonGroups } from './fields/season.ts';
import { StationMonths } from './Months.tsx';
import type { PlaceView } from './view.ts';

export const Season = (view: PlaceView) => (
  <>
    <FieldGroups view={view} groups={seasonGroups} id="season" />
    <h3>Rain by month</h3>
    <StationMonths {...view} />
  </>
);
