/** How a kind of stock stands in the table of intakes, or a round share of weight where no guide prints one. */
type Appetite =
  | {
      readonly animal: 'beef-cow' | 'growing-cattle' | 'nursing-calf' | 'sheep' | 'goat' | 'horse';
      readonly stage: string;
      readonly quality: 'low' | 'average' | 'any';
    }
  | { readonly percent: number };
export interface Grazer {
  readonly label: string;
  /** A common weight that only starts the field. */
  readonly weightLb: number;
  readonly eats: Appetite;
}

/** Kinds of stock that graze, by the keys that stand in links, with what starts the fields beside them. Weights are common practice. */
export const grazers = {
  'cow-nursing': { label: 'Cow with a calf on her', weightLb: 1250, eats: { animal: 'beef-cow', stage: 'lactating', quality: 'average' } },
  'cow-dry': { label: 'Dry cow', weightLb: 1250, eats: { animal: 'beef-cow', stage: 'dry', quality: 'average' } },
  'cow-dry-cured': {
    label: 'Dry cow on cured grass (under 7 % protein)',
    weightLb: 1250,
    eats: { animal: 'beef-cow', stage: 'dry', quality: 'low' },
  },
  /**
   * No guide prints a share for him. A dry cow of 1,250 lb eats 2.2 % (hibberd-thrift-1992), and appetite goes with weight to the 3/4 (manske-1998):
   * of 1,900 lb that is 1.98 %. The 1.7 animal units of 25 lb that penn-state-four-steps prints for 2,000 lb are 2.1 %.
   */
  bull: { label: 'Bull', weightLb: 1900, eats: { percent: 2 } },
  heifer: { label: 'Bred heifer', weightLb: 950, eats: { animal: 'beef-cow', stage: 'dry', quality: 'average' } },
  stocker: { label: 'Stocker or growing heifer', weightLb: 600, eats: { animal: 'growing-cattle', stage: 'stocker', quality: 'any' } },
  calf: {
    label: 'Calf on its mother that grazes some',
    weightLb: 300,
    eats: { animal: 'nursing-calf', stage: 'forage beside milk', quality: 'any' },
  },
  'ewe-nursing': { label: 'Ewe with lambs', weightLb: 160, eats: { animal: 'sheep', stage: 'ewe, nursing twins', quality: 'any' } },
  'ewe-dry': { label: 'Dry ewe', weightLb: 160, eats: { animal: 'sheep', stage: 'ewe, maintenance', quality: 'any' } },
  // Links from before have `doe` alone, at what a doe in milk eats. At rest they eat as ewes do (semler-sheep).
  doe: { label: 'Doe with kids', weightLb: 120, eats: { animal: 'goat', stage: 'doe', quality: 'any' } },
  'doe-dry': { label: 'Dry doe', weightLb: 120, eats: { animal: 'sheep', stage: 'ewe, maintenance', quality: 'any' } },
  horse: { label: 'Horse, donkey or mule', weightLb: 1100, eats: { animal: 'horse', stage: 'maintenance', quality: 'any' } },
} as const satisfies Readonly<Record<string, Grazer>>;

export type GrazerKind = keyof typeof grazers;
