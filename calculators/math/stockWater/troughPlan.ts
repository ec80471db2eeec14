import { troughRules } from '../../tables/stockWater.ts';
import { need } from '../need.ts';
import { flowForGpm } from './deliveredGal.ts';

/**
 * What a trough must hold, how fast it must fill, and how many must drink at once. Beyond 900 ft stock may come as a herd: a quarter of the day's water
 * in the tank, refilled in an hour, 5 to 10 percent drinking at once. Nearer they come one by one: the day's water in four hours, 2 to 4 percent at once.
 * @param options.dailyGal - Water that they need on the hottest day, US gallons; 0 or more
 * @param options.head - Animals, head; above 0
 * @param options.walkFt - Farthest that they graze from the water, feet; 0 or more
 * @returns How they come; least water in the tank, US gallons; least flow, US gallons a minute; head that drink at once, from and to; trough edge for the most of them, feet
 * @throws RangeError if a value is outside its range
 * @source ohioline-anr12-2003, the water trough or tank
 * @example troughPlan({ dailyGal: 1200, head: 60, walkFt: 1500 }) //=> { comes: 'herd', tankGal: 300, flowGpm: 5, atOnceLowHead: 3, atOnceHighHead: 6, edgeFt: 12 }
 */
export function troughPlan({ dailyGal, head, walkFt }: { readonly dailyGal: number; readonly head: number; readonly walkFt: number }): {
  readonly comes: 'herd' | 'one-by-one';
  readonly tankGal: number;
  readonly flowGpm: number;
  readonly atOnceLowHead: number;
  readonly atOnceHighHead: number;
  readonly edgeFt: number;
} {
  need('troughPlan', 'dailyGal', dailyGal, { atLeast: 0 });
  need('troughPlan', 'head', head, { above: 0 });
  need('troughPlan', 'walkFt', walkFt, { atLeast: 0 });
  const { herd, oneByOne, oneByOneWithinFt, spaceFtPerHead } = troughRules;
  // The source leaves 900 to 1,000 ft open: plan for the herd there.
  const comes = walkFt > oneByOneWithinFt ? 'herd' : 'one-by-one';
  const tankGal = comes === 'herd' ? (dailyGal * herd.tankPercentOfDay) / 100 : 0;
  const [lowPercent, highPercent] = comes === 'herd' ? herd.atOncePercent : oneByOne.atOncePercent;
  const atOnceHighHead = (head * highPercent) / 100;
  return {
    comes,
    tankGal,
    flowGpm: comes === 'herd' ? flowForGpm(tankGal, herd.refillHours) : flowForGpm(dailyGal, oneByOne.dayHours),
    atOnceLowHead: (head * lowPercent) / 100,
    atOnceHighHead,
    edgeFt: atOnceHighHead * spaceFtPerHead,
  };
}
