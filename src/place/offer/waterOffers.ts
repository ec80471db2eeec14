import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';
import type { WaterPoint } from '../model/waterPoint.ts';
import { type OfferMap, type OfferPart, type Offers, offerMap, told, typedUnder, word } from './offered.ts';

/** How the surface of a pond is known, the surest way first. */
const surfaceFrom = ({ surfaceAc, lengthFt, widthFt, shoreFt }: WaterPoint): string | undefined => {
  if (surfaceAc !== undefined) return 'known';
  if (lengthFt !== undefined && widthFt !== undefined) return 'across';
  return shoreFt === undefined ? undefined : 'shore';
};
function waterOffers(point: WaterPoint): OfferMap {
  // Tanks of no known shape, and a slip of no known day, tell nothing.
  const tanks = point.tanks?.shape === undefined ? undefined : point.tanks;
  const slip = point.slip?.day === undefined ? undefined : point.slip;
  const slipDay = slip?.day === undefined ? undefined : dayOf(slip.day);
  const said = slipDay === undefined ? undefined : `slip of ${printDay(slipDay)}`;
  const ofTanks = { typed: typedUnder(point.typed, 'tanks.') };
  const ofSlip = { says: said, typed: typedUnder(point.typed, 'slip.') };
  return offerMap(
    word('water.supply', point.supply),
    word('water.surfaceFrom', surfaceFrom(point)),
    told('water.length', point, 'lengthFt'),
    told('water.width', point, 'widthFt'),
    told('water.surface', point, 'surfaceAc'),
    told('water.shore', point, 'shoreFt'),
    told('water.maxDepth', point, 'maxDepthFt'),
    told('water.deadDepth', point, 'deadDepthFt'),
    told('water.evaporation', point, 'evaporationInPerDay'),
    told('water.seepage', point, 'seepageInPerDay'),
    told('water.flow', point, 'flowGpm'),
    point.flowGpm === undefined ? [] : word('water.flowFrom', 'known'),
    word('water.storage', tanks?.shape),
    told('water.tanks', tanks, 'count', ofTanks),
    told('water.tankAcross', tanks, 'acrossFt', ofTanks),
    told('water.tankLength', tanks, 'lengthFt', ofTanks),
    told('water.tankWidth', tanks, 'widthFt', ofTanks),
    told('water.tankDepth', tanks, 'depthFt', ofTanks),
    slip?.sulfateMgPerL === undefined || slip.saltMgPerL === undefined ? [] : word('water.slip', 'tested'),
    // As the place asks for them: sulfate as such, salts as dissolved solids, and nitrate in the laboratory's own word, of which nobody is sure.
    slip?.sulfateMgPerL === undefined ? [] : word('water.sulfateAs', 'so4'),
    slip?.saltMgPerL === undefined ? [] : word('water.saltAs', 'dissolved-solids'),
    slip?.nitrateMgPerL === undefined ? [] : word('water.nitrateAs', 'not-said'),
    told('water.sulfate', slip, 'sulfateMgPerL', ofSlip),
    told('water.salt', slip, 'saltMgPerL', ofSlip),
    told('water.nitrate', slip, 'nitrateMgPerL', ofSlip),
  );
}

/** A form takes one: where there are several, somebody has to say which is meant. */
const several = ({ water }: Place): Offers['besides'] =>
  water.length < 2 ? [] : [{ say: `Your place has ${water.length} places with water, and this form takes one: tap the one that you mean.` }];

export const part: OfferPart = ({ place, water }) => (water ? { single: waterOffers(water) } : { besides: several(place) });
