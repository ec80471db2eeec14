import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { cleared } from '../kit/cleared.ts';
import type { Calculator } from '../kit/define.ts';
import { inputNameOf } from '../kit/screen.ts';
import { changeSystem, type Form, type Problem, startTexts, type Texts, withPlaceOf } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';
import type { PlaceMarks, Whose } from './props.ts';
import { tallied } from './tallied.ts';
import { blankIn, type Touched, touchedBy } from './touched.ts';

/** A form as it is taken over: what stands in it, and whose that is. */
export interface Opening {
  readonly form: Form;
  readonly system: UnitSystem;
  readonly notices: readonly string[];
  /** What a link names, by path. */
  readonly linked: Touched;
  readonly touched: Touched;
  /** What a link leaves empty, to be asked here; what was empty before stays so where nothing is said. */
  readonly blank?: Touched;
  /** Paths that today was put into, and whose today. */
  readonly today: ReadonlyMap<string, Whose>;
  readonly placed: Touched;
  readonly filled?: string | undefined;
  /** What the open place says of these figures; nothing of those of a link. */
  readonly place?: PlaceMarks | undefined;
  readonly names: SideNames;
}
export type SideNames = readonly [mine: string, theirs: string];

export interface Held {
  readonly form: Form;
  readonly system: UnitSystem;
  /** What is said of how it was opened. */
  readonly notices: readonly string[];
  readonly linked: Touched;
  /** Paths of this side; those of the other begin with `that.`. */
  readonly touched: Touched;
  readonly today: ReadonlyMap<string, Whose>;
  /** Filled in from the values of the reader's kind of country, and not typed over since. */
  readonly placed: Touched;
  /** From whose values: a kind of country, an office. */
  readonly filled?: string | undefined;
  readonly place: PlaceMarks | undefined;
  /** Cleared, or left empty by a link, and not typed in since: nobody is told yet that it is missing. */
  readonly blank: Touched;
  readonly names: SideNames;
  /** What somebody let differ between two sides, whether it does already or not. */
  readonly differs: readonly string[];
  /** One's own of this side that the other was begun with. */
  readonly came: Touched;
}

export const nobody: Touched = new Set<string>();
const startHeld = ({ inputs }: Calculator, texts: Texts = startTexts(inputs)): Held => ({
  form: { this: texts, that: null },
  system: 'us',
  notices: [],
  linked: nobody,
  touched: nobody,
  today: new Map(),
  placed: nobody,
  place: undefined,
  blank: nobody,
  names: ['', ''],
  differs: [],
  came: nobody,
});

/** What counts as the reader’s own: nothing that the invented place put in. */
export const ownOf = ({ touched, placed, place }: Pick<Held, 'touched' | 'placed' | 'place'>): Touched =>
  place?.isDemo ? without(touched, placed) : touched;

const without = (paths: Touched, gone: Touched): Touched => (paths.size === 0 ? paths : new Set([...paths].filter((path) => !gone.has(path))));

/** The form with what goes by the dates that stand in it; nothing where nothing has to move. */
export type Follow = (now: Omit<Held, 'notices' | 'differs' | 'came'>) => Opening | undefined;

/** All that a form can be made to do. */
export function useHeld(calculator: Calculator, begun: Texts | undefined, follow: Follow | undefined) {
  const [held, setHeld] = useState<Held>(() => startHeld(calculator, begun));
  const { inputs } = calculator;
  // As it was opened: with dates that can still come.
  const example = useRef<Pick<Held, 'form' | 'system' | 'notices' | 'today' | 'placed'>>(held);
  const actions = useMemo(() => {
    const opened = (opening: Opening): Opening => {
      if (opening.linked.size === 0 && [...opening.touched].every((path) => opening.placed.has(path))) example.current = opening;
      return opening;
    };
    // What goes by what was put in moves with it: the form is read, worked out and drawn once.
    const put = (change: (now: Held) => Partial<Held>) =>
      setHeld((now) => {
        const next = { ...now, ...change(now) };
        const followed = follow?.(next);
        return followed ? { ...next, ...opened(followed) } : next;
      });
    const own = (now: Held, before: Texts, after: Texts): Partial<Held> => {
      const changed = touchedBy(nobody, before, after);
      return { touched: new Set([...now.touched, ...changed]), blank: without(now.blank, changed), placed: without(now.placed, changed) };
    };
    return {
      open: (opening: Opening) => put(() => opened(opening)),
      tell: (notice: string) => put(() => ({ notices: [notice] })),
      putThis: (typed: Texts) =>
        put((now) => {
          const texts = tallied(inputs, now.form.this, typed);
          return { form: { ...now.form, this: texts }, ...own(now, now.form.this, texts) };
        }),
      /** Values of the reader's own country, into the fields that they are for. */
      fill: (texts: Texts, paths: readonly string[], filled: string) =>
        put((now) => {
          const all = { ...now.form.this, ...texts };
          return { form: { ...now.form, this: all }, ...own(now, now.form.this, all), placed: new Set([...now.placed, ...paths]), filled };
        }),
      putThat: (typed: Texts) =>
        put(({ form, touched }) => {
          const before = form.that ?? typed;
          const texts = tallied(inputs, before, typed);
          return {
            form: { ...form, that: texts },
            touched: new Set([...touched, ...[...touchedBy(nobody, before, texts)].map((path) => `that.${path}`)]),
          };
        }),
      /** What both sides share, typed once. */
      putBoth: (typed: Texts) =>
        put((now) => {
          const texts = tallied(inputs, now.form.this, typed);
          const that = now.form.that;
          const changed = Object.fromEntries(Object.entries(texts).filter(([key, text]) => text !== now.form.this[key]));
          return { form: { this: texts, that: that && { ...that, ...changed } }, ...own(now, now.form.this, texts) };
        }),
      compare: () => put(({ form, touched }) => ({ form: { ...form, that: form.that ? null : form.this }, differs: [], came: touched })),
      letDiffer: (key: string) =>
        put(({ differs, came, touched }) => ({
          differs: [...differs, key],
          came: new Set([...came, ...[...touched].filter((path) => inputNameOf(path) === key)]),
        })),
      name: (names: SideNames) => put(() => ({ names })),
      clear: () =>
        put((now) => {
          const texts = cleared(inputs, now.form.this);
          // What stays of the example is nobody's answer; what is empty is the reader's to give.
          const blank = blankIn(texts);
          return { form: { this: texts, that: now.form.that && withPlaceOf(inputs, texts, texts) }, notices: [], touched: blank, blank };
        }),
      exampleAgain: () =>
        put(({ system, place }) => {
          const { form, system: from, notices, today, placed } = example.current;
          return {
            ...startHeld(calculator),
            system,
            notices,
            today,
            placed,
            touched: placed,
            place,
            form: { this: changeSystem(inputs, form.this, from, system, place?.textsIn), that: null },
          };
        }),
      switchSystem: (to: UnitSystem) =>
        put(({ form, system, place }) => {
          const inOther = (texts: Texts): Texts => changeSystem(inputs, texts, system, to, place?.textsIn);
          return { form: { this: inOther(form.this), that: form.that && inOther(form.that) }, system: to };
        }),
    };
  }, []);
  return [held, actions] as const;
}

/** A pause this long ends a number; until then nobody is told that it is wrong. */
const pauseMs = 900;
/** Which fields are wrong by now: the one being typed gets a moment. */
export function useSettled(problems: readonly Problem[]): {
  readonly told: readonly Problem[];
  readonly onType: (at: string) => void;
  readonly onLeave: () => void;
} {
  const [typing, setTyping] = useState('');
  const timer = useRef(0);
  useEffect(() => () => clearTimeout(timer.current), []);
  return {
    told: problems.filter(({ at }) => at !== typing),
    onType: (at) => {
      clearTimeout(timer.current);
      setTyping(at);
      timer.current = window.setTimeout(() => setTyping(''), pauseMs);
    },
    onLeave: () => {
      clearTimeout(timer.current);
      setTyping('');
    },
  };
}

/** The same texts as before where none of them differs, so that what is worked out from them can stay. */
export function useSame(texts: Texts | null): Texts | null {
  const held = useRef(texts);
  if (held.current === null || texts === null || touchedBy(nobody, held.current, texts) !== nobody) held.current = texts;
  return held.current;
}
