import type { Caution } from '../kit/define.ts';

// What harms horses, donkeys and mules, in the same words wherever a form knows who grazes or eats there.

interface Grazed {
  readonly stock: readonly { readonly kind: string }[];
}
type Words = Omit<Caution<unknown>, 'when'>;

/** A horse, donkey or mule. Stock that no list names may be one too. */
export const isHorse = (kind: string): boolean => kind === 'horse' || kind === 'other';
export const hasHorses = ({ stock }: Grazed): boolean => stock.some(({ kind }) => isHorse(kind));

/** The bottom three inches hold the most sugar: horses leave before grass is bitten so low (swinker-laminitis-2013). */
const sugaryIn = 3;
/** Grass that grows less is stressed, and keeps the sugar that it makes: half an inch of ordinary sod in a week, lb/ac a day. Common practice. */
const stressedLbPerAcDay = 20;
/** Is it bitten into its sugar, or does it grow too slowly to use it up? */
export const isSugary = ({ stopHeightIn, growthLbPerAcDay }: { readonly stopHeightIn: number; readonly growthLbPerAcDay: number }): boolean =>
  stopHeightIn <= sugaryIn || growthLbPerAcDay < stressedLbPerAcDay;

export const founder: Words = {
  lead: 'Horses and donkeys founder on short or stressed grass. Shut them in on hay.',
  life: true,
  say: 'Grass keeps most of its sugar in the bottom three inches (8 cm). Drought, frost or a close bite adds more, in cool-season grass above all, and it can founder a horse, pony, donkey or mule: fat ones, and those that foundered before, first. Move them before they bite below three inches. While the grass hardly grows, keep them in a dry lot on hay; the first rain does not end it. Sore feet or a rocked-back stance means the veterinarian at once.',
  source: 'swinker-laminitis-2013, with drought-horse-pasture and common practice',
};
export const fescueMares: Words = {
  lead: 'Old fescue kills foals and mares. Keep mares off it before foaling.',
  life: true,
  say: 'The toxin of old tall fescue gives mares that carry a foal a long, hard foaling, a thick placenta and no milk, and kills foals and mares. Most veterinarians want them on other feed from 30 to 90 days before the foal is due. Ask yours, and have somebody there at the foaling.',
  source: 'extension-fescue-mares, with oregon-fescue-mares',
};
export const horseHay: Words = {
  lead: 'Sorghum, foxtail millet or old fescue hay can kill horses. Ask first.',
  life: true,
  say: 'Ask what the hay is before a horse, donkey or mule gets it. Sorghum and sudangrass hay: none. Foxtail (German) millet hay: not as their main hay, for it harms kidneys, bones and joints and has killed. Old fescue hay: none for mares in foal. And no feed that was made for cattle: the monensin in it kills horses. Ask your veterinarian.',
  source: 'high-plains-millet, with extension-fescue-mares, blakley-monensin-2012 and common practice',
};
