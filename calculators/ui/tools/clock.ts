import type { NumberInput } from '../../kit/inputs.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../../units/units.ts';
import { keptText } from '../fieldText.ts';

/**
 * A running clock as it is kept: what had passed when it was last looked at, by which clocks. Two of them, since neither is enough: the
 * device's own can be set or corrected at any moment, the browser's steady one stands still on many phones while they sleep.
 */
export interface ClockReading {
  readonly wallMs: number;
  readonly steadyMs: number;
}
export interface RunningClock extends ClockReading {
  readonly elapsedMs: number;
}

/**
 * The clock at a later look. As long as the page was in view the steady clock alone counts. Behind a locked screen, in another tab or over a
 * reload the longer time counts: the steady clock may have slept, and one that was set back says nothing.
 */
export function clockAt(clock: RunningClock, now: ClockReading, wasAway: boolean): RunningClock {
  const steady = now.steadyMs - clock.steadyMs;
  const passed = wasAway ? Math.max(steady, now.wallMs - clock.wallMs) : steady;
  return { ...now, elapsedMs: clock.elapsedMs + Math.max(0, passed) };
}

export const clockKept = ({ wallMs, steadyMs, elapsedMs }: RunningClock): string => `${wallMs}|${steadyMs}|${elapsedMs}`;
export function clockOf(kept: string | null): RunningClock | undefined {
  if (!kept) return undefined;
  const [wallMs = Number.NaN, steadyMs = wallMs, elapsedMs = 0] = kept.split('|').map(Number);
  return Number.isFinite(wallMs + steadyMs + elapsedMs) ? { wallMs, steadyMs, elapsedMs } : undefined;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** A running clock: `0:07`, `12:30`, `1:02:07`. */
export function clockText(elapsedS: number): string {
  const whole = Math.floor(elapsedS);
  const [hours, minutes, seconds] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`;
}

const counted = (word: string) => (count: number) => `${Math.round(count)} ${word}${Math.round(count) === 1 ? '' : 's'}`;
const [minutes, seconds] = [counted('minute'), counted('second')];

/** A stretch of time in words: `5 seconds`, `5 minutes`. */
export const stretchText = (lengthS: number): string => (lengthS < 90 && lengthS !== 60 ? seconds(lengthS) : minutes(lengthS / 60));

/** A time that was taken, in words for whoever hears it: `4 minutes 12 seconds`. */
export function takenText(elapsedS: number): string {
  const whole = Math.round(elapsedS);
  const minutesS = whole - (whole % 60);
  return `${minutesS > 0 ? `${minutes(minutesS / 60)} ` : ''}${seconds(whole % 60)}`;
}

/** As fine as a thumb can stop a watch: the rest would be false. */
const digitsIn: Partial<Record<UnitName, number>> = { s: 1, min: 2, hr: 4 };

/** What a watch measured, as a person would type it into that field. */
export function measuredText(elapsedS: number, input: NumberInput, system: UnitSystem): string {
  const shown = unitIn(system, input.unit);
  const digits = input.whole ? 0 : (digitsIn[shown] ?? 1);
  return keptText(String(Number(convert(elapsedS, 's', shown).toFixed(digits))), input.unit, system);
}

/** A mark that is told later than this was missed: the screen slept, or the page was closed. */
const lateS = 3;

/** What a clock calls out for the marks from `told` up to now; a missed one with how long ago it was. */
export function callText(atS: readonly number[], says: readonly string[], told: number, elapsedS: number): string {
  return atS
    .flatMap((mark, index) => {
      if (index < told || mark > elapsedS) return [];
      const ago = elapsedS - mark;
      const when = ago > lateS ? `${stretchText(mark)}, passed ${stretchText(ago)} ago` : stretchText(mark);
      return [`${when}: ${says[index] ?? ''}`];
    })
    .join('; ');
}
