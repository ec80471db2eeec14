import { expect, it } from 'vitest';
import { withChanges } from '../../src/place/ui/edit.ts';
import { monthChanges } from '../../src/place/ui/Months.tsx';
import { near } from '../support/near.ts';
import { aPlace } from './aPlace.ts';

it('a month of rain that is typed in millimeters leaves the eleven others as they were typed in inches', () => {
  const stationMonthsIn = [2.1, 2.2, 3.1, 3.4, 4.5, 4.37, 3.3, 3.2, 3.6, 3.1, 2.9, 2.37];
  const place = aPlace({ stationMonthsIn });
  const after = withChanges(place, monthChanges(place, 0, '60\u00a0mm', 'si'));
  expect(after.stationMonthsIn?.slice(1)).toEqual(stationMonthsIn.slice(1));
  near(after.stationMonthsIn?.[0], 60 / 25.4, 1e-9);
  expect(after.typed).toEqual({ 'stationMonthsIn.0': '60\u00a0mm' });
});
