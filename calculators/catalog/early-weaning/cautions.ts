import { type Caution, caution } from '../../kit/define.ts';
import type { compute } from './compute.ts';
import type { Values } from './inputs.ts';

type V = Values & ReturnType<typeof compute>;
const isFed = ({ calfGoes }: V): boolean => calfGoes !== 'sold';

export const cautions: readonly Caution<V>[] = [
  caution(({ ageDays }) => ageDays < 45, {
    lead: 'Calves this young cannot live without milk.',
    life: true,
    say: 'Calves this young cannot live without milk. Do not wean under about six weeks unless your veterinarian plans the feeding with you.',
    source: 'nevada-early-weaning',
  }),
  caution(({ ageDays }) => ageDays >= 45 && ageDays < 120, {
    lead: 'Grass or hay alone will not carry calves this young through weaning.',
    life: true,
    say: 'Calves under about four months live after weaning on rich, dry, palatable feed, fresh each day, in a small clean pen. Grass or hay alone will not carry them. The younger they are, the more this is a last resort: ask your veterinarian.',
    source: 'danielson-1997',
  }),
  caution(({ keptHerdLb }) => keptHerdLb <= 0, {
    lead: 'This way nothing is kept: the weaned calf eats more than both leave.',
    say: 'Nothing stays on this place this way: the weaned calf eats more of your forage than cow and calf leave. Weaning early saves your grass only if the calf goes, or eats feed from elsewhere.',
    source: 'common practice',
  }),
  caution(isFed, {
    lead: 'Too much grain too fast kills calves. Bring them to it over weeks.',
    life: true,
    say: 'Bring calves to grain over two to three weeks: too much too fast kills them. Vaccines, a clean pen with shade and water they can find, and a look at every calf twice a day: fresh-weaned calves take lung sickness. Plan it with your veterinarian. Feed with monensin kills horses.',
    source: 'common practice',
  }),
  caution(({ calfGoes }) => calfGoes === 'sold', {
    lead: 'Before a calf is sold, keep to the withdrawal days of any drug.',
    say: 'Keep to the withdrawal days of any drug before a calf is sold. Light calves just off the cow are often marked down, and a long haul in heat costs weight and lives.',
    source: 'common practice',
  }),
  caution(() => true, {
    lead: 'Wean across a tight fence, and see that cows and calves have water.',
    say: 'Wean across a tight fence, not in a hot, dusty lot, and see that cows and calves have water. Look at the cows’ bags for a week.',
    source: 'common practice',
  }),
  caution(({ slideUsdPerCwt }) => slideUsdPerCwt < 0, {
    lead: 'Your heavier calf brings more a pound. Look at both quotes again.',
    say: 'Your two quotes say that the heavier calf brings more a pound. That is seldom so. Look whether both are from one sale on one day.',
    source: 'common practice',
  }),
  caution(({ nursingGainLbPerDay }) => nursingGainLbPerDay > 3, {
    lead: 'No calf gains over 3 lb a day on drought grass. Check weights and days.',
    say: 'Your two weights mean a gain of more than 3 lb a day on the cow. No calf does that on drought grass; look at the weights and the days again.',
    source: 'common practice',
  }),
  caution(({ ageDays, aheadDays }) => ageDays + aheadDays > 300, {
    lead: 'The calf would be over ten months old at weaning. Check the days.',
    say: 'By these days the calf would be more than ten months old at the usual weaning. Most are weaned at six to eight; look at its age and the days again.',
    source: 'common practice',
  }),
];
