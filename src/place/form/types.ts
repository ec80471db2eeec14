import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Change, Reach } from '../../../calculators/ui/CalculatorForm.tsx';
import type { Opening } from '../../../calculators/ui/formState.ts';
import type { PlaceMarks } from '../../../calculators/ui/props.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Clock, clockNow, Fresh } from '../../scripts/today.ts';
import type { Place } from '../model/place.ts';

/** One figure of a link that the place has otherwise. */
export interface Difference {
  readonly label: string;
  readonly now: string;
  readonly mine: string;
}
/** Where a form stands to the place: fresh or the reader's own, or opened with somebody's link. */
export interface AtPlace {
  readonly place: Place;
  readonly places: readonly Place[];
  /** How many pastures may be chosen: none where the form asks for nothing of them. */
  readonly takes: 'none' | 'one' | 'several';
  readonly chosen: () => readonly string[];
  readonly said: () => readonly string[];
  readonly clockNow: typeof clockNow;
  readonly exampleBy: (clock: Clock, calculator: Calculator, system: UnitSystem) => Fresh;
  readonly marks: (system: UnitSystem) => PlaceMarks;
  /** A form that the reader's own result led to: what the link leaves open or does not name comes from the place. */
  readonly ledTo: (query: string, form: Opening['form'], named: ReadonlySet<string>, system: UnitSystem) => Partial<Opening> | undefined;
  readonly choose: (ids: readonly string[], change: Change, reach: Reach) => void;
  readonly differences: (change: Change) => readonly Difference[];
  readonly use: (change: Change, reach: Reach) => void;
  readonly switchTo: (id: string) => void;
  readonly throwAway: () => Promise<void>;
  readonly placePage: string;
  /** Above the form. Of somebody’s link nothing is taken for the reader’s own. */
  readonly draw: (root: Element, form: { readonly id: string; readonly isLink: boolean; readonly reach: () => Reach | undefined }) => void;
}
