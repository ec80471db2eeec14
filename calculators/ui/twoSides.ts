import { setApart, theirAnswers } from './apart.ts';
import { figureBetween, rangeBetween } from './between.ts';
import { Differs } from './Differs.tsx';
import { sideTitles } from './sideTitles.ts';

/** What a form needs once two managements stand in it. */
export const twoSides = { Differs, figureBetween, rangeBetween, setApart, sideTitles, theirAnswers };
export type TwoSides = typeof twoSides;
