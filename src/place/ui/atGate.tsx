import type { ComponentChildren } from 'preact';
import type { Herd } from '../record/herds.ts';
import type { Rows } from './rows.ts';
import type { PlaceView } from './view.ts';

/** What a tap at the gate needs to write its line. */
export interface AtGate extends PlaceView {
  readonly rows: Rows;
  /** The day that is written: today, or one that was set back. */
  readonly day: number;
  readonly todayDay: number;
  readonly herds: readonly Herd[];
}

/** Buttons in a row, each wide enough for a thumb. */
export const Choices = ({ label, children }: { readonly label: string; readonly children: ComponentChildren }) => (
  // biome-ignore lint/a11y/useSemanticElements: a fieldset here would take the looks of a question of two answers
  <div class="gate-choices" role="group" aria-label={label}>
    {children}
  </div>
);
