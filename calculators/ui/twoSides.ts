import { setApart, theirAnswers } from './apart.ts';
import { toldBetween } from './between.ts';
import { Differs } from './Differs.tsx';
import { sideTitles } from './sideTitles.ts';

/** What a form needs once two managements stand in it. */
export const twoSides = { Differs, setApart, sideTitles, theirAnswers, toldBetween };
export type TwoSides = typeof twoSides;
