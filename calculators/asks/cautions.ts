import type { Caution } from '../kit/define.ts';
import { founder, hasHorses } from './horses.ts';

/** What several calculators warn of in the same words; each says when. */
export const toxicStubble = {
  lead: 'Leave 4 inches (10 cm) of old tall fescue: the lowest hold most toxin.',
  say: 'The lowest inches of old tall fescue hold the most of its toxin: the bottom two by one Missouri study, two to four (5 to 10 cm) by a later page. Leave 4 inches (10 cm), and 3 (8 cm) at the least where you know that the stand is free of it.',
  source: 'lory-fall-nitrogen-2022',
};
export const hardOne = {
  lead: 'If this is a hard one, talk it over with somebody you trust.',
  say: 'If this is a hard one, don’t carry it alone. Talk it over with somebody you trust, or call one of the numbers under the answer.',
  source: 'common practice',
};
export const nothingStands = {
  lead: 'Nothing stands above the stubble. Wait, feed, or take stock elsewhere.',
  life: true,
  say: 'The stand is at or below the stubble that you want to leave. There is nothing to graze here now; wait, feed, or take stock elsewhere.',
  source: 'common practice',
} as const;
interface Grazed {
  readonly stock: readonly { readonly kind: string }[];
}
const browsers: readonly string[] = ['ewe-nursing', 'ewe-dry', 'doe', 'doe-dry'];
const thinForCattle = {
  lead: 'Cattle go short on grass this thin before it is gone.',
  say: 'Under about 750 pounds an acre cattle cannot bite off enough in a day. They go short before the grass is gone.',
  source: 'white-b5036',
};
/** Grass under about 750 pounds an acre, by who grazes it: cattle cannot fill themselves there, while sheep, goats and horses bite lower and come to other harm; horses on any grass that is sugary. */
export const thinGrass = <V extends Grazed>(
  isThin: (values: V) => boolean,
  forCattle: Omit<Caution<V>, 'when'> = thinForCattle,
  isSugaryHere: (values: V) => boolean = () => false,
): readonly Caution<V>[] => [
  { when: (values) => isThin(values) && values.stock.some(({ kind }) => kind !== 'horse' && !browsers.includes(kind)), ...forCattle },
  {
    when: (values) => isThin(values) && values.stock.some(({ kind }) => browsers.includes(kind)),
    lead: 'Sheep and goats eat grass this thin to the crown, and the worms with it.',
    life: true,
    say: 'On grass as thin as this, under about 750 pounds an acre, sheep bite closer than cattle, down to the crown, and goats leave it for brush and weeds. Most worm larvae sit in the lowest inches, and hungry stock eat plants that poison them. Move or feed them before it is this short.',
    source: 'uky-multispecies, coffey-hale-parasites',
  },
  { when: (values) => (isThin(values) || isSugaryHere(values)) && hasHorses(values), ...founder },
];
export const recalledInch = {
  lead: 'The pounds in an inch for this stand are from memory. Clip three plots.',
  say: 'The pounds in an inch for this stand are from memory. Clip three plots before you rely on them.',
  source: 'from memory',
};
export const beforeSale = {
  lead: 'Before anything is sold, look up how long its last medicine holds it.',
  say: 'Before anything is sold, look up how long its last medicine keeps it from slaughter. Thin or lame animals and hot days: short hauls, early in the morning, or not at all.',
  source: 'common practice',
};
