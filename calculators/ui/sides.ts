import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import { runTexts } from '../kit/runTexts.ts';
import { type Form, type Problem, type Texts, withPlaceOf } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';

export interface RanSide {
  readonly outcome: Outcome | null;
  readonly problems: readonly Problem[];
  /** What stands is of numbers before, or nothing yet: those typed now are not worked out. */
  readonly isEarlier?: boolean;
  /** While a long run goes on: how far it is, and a way to stop it. */
  readonly running?: VNode;
}
/** One side of a form, as it is typed: computed at once, or beside the form. */
export type UseSide = (calculator: Calculator, texts: Texts | null, system: UnitSystem) => RanSide | null;

/** Reads and computes one side. A fault of ours must not leave the results of other numbers standing. */
export function runSide(calculator: Calculator, texts: Texts, system: UnitSystem): RanSide {
  try {
    const ran = runTexts(calculator, texts, system);
    return 'outcome' in ran ? { ...ran, problems: [] } : { outcome: null, problems: ran.refusals };
  } catch (error) {
    console.error(error);
    return { outcome: null, problems: [{ at: '', say: 'This cannot be computed. The fault is in this page, not in what you typed.' }] };
  }
}

export const useSide: UseSide = (calculator, texts, system) => useMemo(() => texts && runSide(calculator, texts, system), [texts, system]);

/** A side that was worked out before its form was drawn, in a moment of its own. */
export interface RanAhead extends RanSide {
  readonly texts: Texts;
  readonly system: UnitSystem;
}
export const runAhead = (calculator: Calculator, texts: Texts, system: UnitSystem): RanAhead => ({
  texts,
  system,
  ...runSide(calculator, texts, system),
});
/** What was worked out ahead is taken from there. */
export const sideOf =
  (ahead: readonly RanAhead[]): UseSide =>
  (calculator, texts, system) =>
    useMemo(
      () => texts && (ahead.find((each) => each.texts === texts && each.system === system) ?? runSide(calculator, texts, system)),
      [texts, system],
    );

/** The other side with the place of the first, or nothing when there is no comparison. */
export const otherTexts = (calculator: Calculator, form: Form): Texts | null => form.that && withPlaceOf(calculator.inputs, form.this, form.that);
