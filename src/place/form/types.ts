import type { FunctionComponent } from 'preact';
import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Change, Reach } from '../../../calculators/ui/formProps.ts';
import type { Opening } from '../../../calculators/ui/formState.ts';
import type { PlaceMarks } from '../../../calculators/ui/props.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Clock } from '../../scripts/clock.ts';
import type { Fresh } from '../../scripts/today.ts';
import type { Place } from '../model/place.ts';
import type { Filled } from '../offer/fillTexts.ts';

/** What is kept of a form, and where the offer to keep it stands. */
export interface Keeping {
  /** Below the result. */
  readonly host: Element;
  readonly box: HTMLElement;
  readonly id: string;
  readonly calculator: Calculator;
  readonly change: Change;
}
/** One figure of a link that the place has otherwise. */
export interface Difference {
  readonly label: string;
  readonly now: string;
  readonly mine: string;
}
interface OpenedLink {
  readonly form: Opening['form'];
  readonly named: ReadonlySet<string>;
  readonly system: UnitSystem;
  /** Put in here before, by whoever reads it now. */
  readonly isOwn: boolean;
}
/** What the place does to a form that a link opened. */
export interface AtLink {
  /** Of somebody’s link nothing is taken for the reader’s own. */
  readonly isOthers: () => boolean;
  /** What the place adds: marks where the figures are the reader’s own, the rest where their own result led here, else nothing. */
  readonly opened: (query: string, link: OpenedLink) => Partial<Opening>;
  readonly differences: (change: Change) => readonly Difference[];
  readonly use: (change: Change, reach: Reach) => void;
  readonly Bar: FunctionComponent<{ readonly link: AtLink; readonly reach: () => Reach | undefined; readonly onUse: () => void }>;
}
/** A form as the open place fills it. */
export interface AtForm {
  readonly box: HTMLElement;
  readonly calculator: Calculator;
  readonly isDemo: boolean;
  readonly placePage: string;
  readonly filledIn: (system: UnitSystem, form?: Calculator) => Filled;
  readonly marksOf: (filledIn: (system: UnitSystem) => Filled) => PlaceMarks;
  /** Another choice of what the place has several of. */
  readonly take: (ids: readonly string[]) => void;
}
/** What the place has several of, each by its name. */
export interface Choice {
  /** `Which pasture` */
  readonly says: string;
  readonly of: readonly { readonly id: string; readonly name: string }[];
  readonly isMany: boolean;
}
/** Where a form stands to the place: fresh or the reader's own, or opened with somebody's link. */
export interface AtPlace {
  readonly place: Place;
  readonly places: readonly Place[];
  /** What the form takes one or some of. */
  readonly choices: readonly Choice[];
  readonly chosen: () => readonly string[];
  readonly said: () => readonly string[];
  readonly clockNow: (builtIso: string) => Clock;
  readonly exampleBy: (clock: Clock, calculator: Calculator, system: UnitSystem) => Fresh;
  /** Only where a link opened the form. */
  readonly link: AtLink | undefined;
  /** @throws Error if what that takes cannot be had */
  readonly choose: (ids: readonly string[], reach: Reach) => Promise<void>;
  /** The choice as it was, where the form goes back to what stood in it. */
  readonly recall: (ids: readonly string[]) => void;
  readonly switchTo: (id: string) => void;
  readonly placePage: string;
  /** Above the form. */
  readonly draw: (root: Element, id: string, reach: () => Reach | undefined) => void;
}
