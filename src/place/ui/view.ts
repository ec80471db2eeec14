import type { Calculator } from '../../../calculators/kit/define.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import type { Session } from './session.ts';

/** A definition by its slug, on demand; nothing where there is none of that name. */
export type Calculators = (slug: string) => Promise<Calculator> | undefined;

/** What every view is drawn from. */
export interface View {
  readonly session: Session;
  readonly system: UnitSystem;
  readonly isPrinting: boolean;
  /** Which edition of the pages this is. */
  readonly edition: string;
}
export interface PlaceView extends View {
  readonly place: Place;
}
