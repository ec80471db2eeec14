import { oftenFatalNitrate } from '../../tables/feedHazards.ts';
import type { compute } from './compute.ts';
import type { Values } from './inputs.ts';

type V = Values & ReturnType<typeof compute>;
interface Caution {
  readonly when: (values: V) => boolean;
  readonly say: string;
  readonly source: string;
}
const hasFeed = ({ forageNitrate }: V): boolean => forageNitrate !== 'not-tested';

export const cautions: readonly Caution[] = [
  {
    when: () => true,
    say: 'Nothing here clears a feed or a water. The lists disagree, one sample is not the whole stack, and thin, sick or hungry stock die at levels that others stand. Talk to the laboratory and to your veterinarian before anything is fed.',
    source: 'common practice',
  },
  {
    when: ({ verdict }) => verdict === 'do-not-feed',
    say: 'At least one list says not to feed or use this. Keep stock away from it now, and ask the veterinarian what can be done with it.',
    source: 'common practice',
  },
  {
    when: ({ gPerCwt }) => gPerCwt >= oftenFatalNitrate.gPerCwt,
    say: 'This is as much nitrate nitrogen in a day as is often fatal: 300 milligrams for each pound of the animal.',
    source: 'mahanna-nitrate',
  },
  {
    when: (values) => values.verdict !== 'under-every-limit' && (hasFeed(values) || values.waterNitrate !== 'not-tested'),
    say: 'Stock that stagger, breathe hard, tremble or lie down, with brown or blue gums: call the veterinarian at once, take the feed away, and do not drive them. Death can come within hours.',
    source: 'common practice',
  },
  {
    when: ({ testedBy, ...values }) => testedBy === 'field-strip' && (values.forageNitrate !== 'not-tested' || values.prussicAcid === 'tested'),
    say: 'A strip or drops in the field can only tell you to hold stock out and send a sample. They never clear a feed. Wait for the laboratory.',
    source: 'common practice',
  },
  {
    when: ({ forageNitrate, waterNitrate, waterSulfate }) =>
      forageNitrate === 'not-said' || waterNitrate === 'not-said' || waterSulfate === 'not-said',
    say: 'The slip’s word is not known, so its number was read the strictest way. It may be four to seven times less. Ring the laboratory before you act on either.',
    source: 'anderson-nitrate-2016',
  },
  {
    when: ({ basis, forageNitrate, prussicAcid }) => basis === 'not-said' && (forageNitrate !== 'not-tested' || prussicAcid === 'tested'),
    say: 'Dry or as fed is not known, so it was read as fed. Ask the laboratory.',
    source: 'common practice',
  },
  {
    when: (values) => hasFeed(values) && values.waterNitrate === 'not-tested',
    say: 'The water was not tested for nitrate. Feed and water add, so the day’s amount here may be too low. Test the water.',
    source: 'harty-nitrate',
  },
  {
    when: (values) => hasFeed(values) && values.otherFeed === 'untested',
    say: 'The other feed was not tested and is counted as high as this one. Test it before you mix with it.',
    source: 'common practice',
  },
  {
    when: (values) => hasFeed(values) && values.verdict !== 'under-every-limit',
    say: 'Never turn hungry stock onto it. Fill them with a low feed first, bring them to it over days, in small meals, and mix it so that they cannot sort it. Drying does not take nitrate out of hay. Do not stretch it with urea.',
    source: 'common practice',
  },
  {
    when: ({ animals }) => animals === 'sheep-or-goats',
    say: 'These lists were written mostly for cattle. For sheep and goats the stricter cattle class stands here; the veterinarian has the last word.',
    source: 'common practice',
  },
  {
    when: ({ crop }) => crop !== 'other',
    say: 'Sorghum kinds: keep stock out of short, wilted, trampled, frosted or new growth after rain, whatever a slip said earlier. Prussic acid kills within minutes; move no animal that shows it, and call the veterinarian. Horses should never have these crops.',
    source: 'common practice',
  },
  {
    when: ({ prussicAcid }) => prussicAcid === 'tested',
    say: 'Prussic acid leaves a sample on its way and changes in the field from day to day. A low figure tells of that sample on that day alone.',
    source: 'common practice',
  },
  {
    when: ({ waterSulfate, waterSalts }) => waterSulfate !== 'not-tested' || waterSalts !== 'not-tested',
    say: 'Sulfur in feed, mineral and distillers grain adds to the water’s sulfate. A pond that dries down gets saltier by the week: test again. Green or blue scum can be deadly to stock, dogs and people, and no number here shows it. Thirsty stock must not be let loose on salty water.',
    source: 'common practice',
  },
];
