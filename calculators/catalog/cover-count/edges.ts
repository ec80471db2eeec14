import { always, defineEdges, edge, shows, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

/** Plant bases of a hundred steps or so, the rest bare. */
const only = 'litter=0&rock=0';

export default defineEdges(definition, {
  limits: { plantCount: [0, 5000], litterCount: [0, 5000], rockCount: [0, 5000], bareCount: [0, 5000] },
  edges: [
    edge('Nothing is counted yet.', { on: 'plant=0&litter=0&rock=0', raised: 'bare=0', silent: 'bare=1' }),
    edge('Fewer than a hundred steps.', { on: `${only}&plant=50`, raised: 'bare=49', silent: 'bare=50' }),
    edge('You met litter, but', { on: 'grazing=heavy&plant=27&rock=3&bare=60', raised: 'litter=10', silent: 'litter=9' }),
    edge('You met litter, but', { raised: 'grazing=heavy', silent: 'grazing=moderate' }),
    always('Watching your boots'),
    // No class from fewer than thirty steps.
    shows('condition', { on: `${only}&plant=20`, shown: 'bare=10', hidden: 'bare=9' }),
    shows('settles', { on: `${only}&plant=20`, shown: 'bare=10', hidden: 'bare=9' }),
    tells('Class for storm runoff:', { on: `${only}&plant=20`, told: 'bare=10', untold: 'bare=9' }),
    // With about half left good is out of reach, and 75 percent may be passed.
    tells('fair at best', { on: `${only}&plant=75&bare=24`, told: 'grazing=moderate', untold: 'grazing=light' }),
    turns('enough', { 'too-few': 'bare=9', yes: 'bare=10' }, { on: `${only}&plant=20` }),
    // Table 2-2c: poor under 50 percent, good over 75; table 2-2d for dry range: 30 and 70.
    turns('condition', { fair: 'bare=50', poor: 'bare=51' }, { on: `${only}&plant=50` }),
    turns('condition', { good: 'bare=24', fair: 'bare=25' }, { on: `${only}&plant=75&grazing=light` }),
    turns('condition', { fair: 'bare=70', poor: 'bare=71' }, { on: `${only}&plant=30&country=dry&grazing=light` }),
    turns('condition', { good: 'bare=29', fair: 'bare=30' }, { on: `${only}&plant=70&country=dry&grazing=light` }),
    turns('condition', { poor: 'grazing=heavy', fair: 'grazing=moderate', good: 'grazing=light' }, { on: `${only}&plant=80&bare=20` }),
    turns('standing', { poor: 'bare=64', 'poor-or-fair': 'bare=63' }),
    turns('standing', { fair: 'bare=24', 'poor-or-fair': 'bare=25' }),
    turns('standing', { 'fair-or-good': 'bare=42', fair: 'bare=43' }, { on: 'grazing=light&plant=75' }),
    turns('standing', { 'fair-or-good': 'plant=11', good: 'plant=12' }, { on: 'grazing=rested&bare=0' }),
    turns('standing', { 'fair-or-good': 'bare=8', any: 'bare=9' }, { on: 'grazing=rested&plant=6' }),
    turns('settles', { settled: 'bare=24', 'more-steps': 'bare=25' }),
    // Nobody walks more than 2,000 steps: 50 of 104 would take more, 50 of 105 fewer.
    turns('settles', { 'at-limit': 'bare=54', 'more-steps': 'bare=55' }, { on: `${only}&plant=50` }),
    // Grazing down to half never makes it good, so only the lower limit counts there.
    tells('holds the limit at 50 %', { on: `${only}&plant=7&bare=3`, told: 'grazing=moderate', untold: 'grazing=light' }),
    tells('poor or fair; try', { told: 'bare=25', untold: 'bare=24' }),
    tells('fair or good; try', { on: 'grazing=light&plant=75', told: 'bare=42', untold: 'bare=43' }),
    tells('holds both limits', { on: 'grazing=rested&plant=6', told: 'bare=9', untold: 'bare=8' }),
    tells('not settled by this count', { told: 'bare=25', untold: 'bare=24' }),
    tells('grazed hard', { told: 'grazing=heavy', untold: 'grazing=moderate' }),
    tells('too few to go by', { on: `${only}&plant=20`, told: 'bare=9', untold: 'bare=10' }),
    tells('Only ', { on: `${only}&plant=20`, told: 'bare=9', untold: 'bare=10' }),
    tells('the one step so far', { on: `${only}&plant=1`, told: 'bare=0', untold: 'bare=1' }),
    shows('moreCount', { shown: 'bare=52', hidden: 'bare=51' }),
    // 3.1 more steps are none, 5.8 are some.
    shows('moreCount', { on: `${only}&plant=70`, shown: 'bare=95', hidden: 'bare=96' }),
    shows('moreCount', { on: `${only}&plant=75&country=dry`, shown: 'bare=131', hidden: 'bare=130' }),
  ],
});
