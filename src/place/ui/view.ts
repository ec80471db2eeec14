import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { OfficeSaid } from '../../office/said.ts';
import type { Place } from '../model/place.ts';
import type { Session } from './session.ts';

/** A calculator, without its definition. */
export interface FormName {
  readonly slug: string;
  readonly title: string;
  readonly version: number;
}

/** What every view is drawn from. */
export interface View {
  readonly session: Session;
  readonly system: UnitSystem;
  readonly isPrinting: boolean;
  /** Which edition of the pages this is. */
  readonly edition: string;
  /** The calculators that there are, in the order of the first page. */
  readonly forms: readonly FormName[];
  /** The office whose copy of the pages this is. */
  readonly office?: OfficeSaid | undefined;
}
export interface PlaceView extends View {
  readonly place: Place;
}
