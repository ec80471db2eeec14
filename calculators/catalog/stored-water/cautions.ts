import { type Asked, heldInRootsIn, leastTopFootIn, soilDepthIn } from './compute.ts';
import { dailyUse } from './inputs.ts';

/** Under this, a foot of soil holds next to nothing and the days mean nothing. */
const leastFootIn = 0.1;
/** Less than this is told as 0.0 in, with days to match. */
const leastHeldIn = 0.05;
const leastUseIn = 0.01;
const isNightWarmer = ({ useFrom, highF, lowF }: Asked): boolean => useFrom === 'weather' && lowF > highF;

export const refusals = [
  {
    at: 'rootsMostIn',
    when: (asked: Asked) => asked.rootsMostIn > soilDepthIn(asked),
    say: 'Roots can’t go deeper than the layers you gave. Add the layer that they are in, or give a lesser depth.',
  },
  {
    at: 'rootsDeepestIn',
    when: ({ rootsMostIn, rootsDeepestIn }: Asked) => rootsDeepestIn < rootsMostIn,
    say: 'The deepest root must be at least as deep as most of them are.',
  },
  {
    at: 'layers',
    when: (asked: Asked) => asked.rootsMostIn <= soilDepthIn(asked) && leastTopFootIn(asked) >= leastFootIn && heldInRootsIn(asked) < leastHeldIn,
    say: 'By these figures the ground in reach of roots holds next to nothing, and no days can be counted. Look again at the thickness, the stones and the survey’s figure.',
  },
  {
    at: 'organicPercent',
    when: (asked: Asked) => leastTopFootIn(asked) < leastFootIn,
    say: 'So much less organic matter would leave the top layer holding nothing. Give a content nearer to the one that its figure stands for.',
  },
  { at: 'lowF', when: isNightWarmer, say: 'The low of the night can’t be above the high of the day.' },
  {
    at: 'highF',
    when: (asked: Asked) => asked.useFrom === 'weather' && !isNightWarmer(asked) && dailyUse(asked).dayUseIn < leastUseIn,
    say: 'In such weather grass uses next to no water. Choose a warmer month, or give a figure of your own.',
  },
] as const;
