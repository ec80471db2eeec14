import { figureBetween, rangeBetween } from './between.ts';
import { Differs } from './Differs.tsx';
import { sideTitles } from './sideTitles.ts';
import { stampOfTwo } from './stampOfTwo.ts';

/** What a form needs once two managements stand in it. */
export const twoSides = { Differs, figureBetween, rangeBetween, sideTitles, stampOfTwo };
export type TwoSides = typeof twoSides;
