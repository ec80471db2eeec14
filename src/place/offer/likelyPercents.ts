// What each kind eats at each stage, from the guides. A build puts in the figures that come of it, so that a form at a place fetches a dozen numbers and no table.
import { commonGrazer, likelyIntakePercent } from '../../../calculators/math/herd/likelyIntakePercent.ts';
import type { Stage } from '../../../calculators/math/herd/stageFromBirth.ts';
import type { StockKind } from '../model/words.ts';

const of = (kind: Parameters<typeof commonGrazer>[0]): number => commonGrazer(kind).intakePercent;

/** Dry matter in a day, percent of weight: the likely one, dry unless a stage has one of its own. */
export const likelyPercents: Readonly<Record<StockKind, { readonly dry: number } & Readonly<Partial<Record<Stage, number>>>>> = {
  cow: { dry: of('cow-dry'), nursing: of('cow-nursing') },
  heifer: { dry: of('heifer'), nursing: of('cow-nursing') },
  bull: { dry: of('bull') },
  stocker: { dry: of('stocker') },
  calf: { dry: of('calf') },
  ewe: { dry: of('ewe-dry'), late: likelyIntakePercent('sheep', 'ewe, late gestation'), nursing: of('ewe-nursing') },
  lamb: { dry: likelyIntakePercent('sheep', 'lamb, growing') },
  doe: { dry: of('doe-dry'), late: of('doe'), nursing: of('doe') },
  horse: { dry: of('horse'), nursing: likelyIntakePercent('horse', 'nursing mare') },
};
