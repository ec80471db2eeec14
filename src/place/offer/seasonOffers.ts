import { monthDay, type OfferPart, offerMap, told, typedUnder, word } from './offered.ts';

/** Past about this many days in one pasture stock go back to the new leaf, and forms count the stay as one until it is gone (common practice). */
const longestStayDays = 7;

/** The days of its year, how it grows and is grazed. */
export const part: OfferPart = ({ place: { season, growth, grazing, typed: all } }) => {
  const typed = { typed: typedUnder(all, 'grazing.') };
  const single = offerMap(
    monthDay('season.turnIn', season?.turnInDay),
    monthDay('season.end', season?.endDay),
    monthDay('season.hayFrom', season?.hayFromDay),
    monthDay('season.frost', season?.frostDay),
    word('growth.curve', growth?.curve),
    word('growth.start', growth?.startMonth),
    word('growth.best', growth?.bestMonth),
    word('growth.quit', growth?.quitMonth),
    word('growth.fall', growth?.fallFlush),
    told('grazing.stay', grazing, 'stayDays', typed),
    told('grazing.herds', grazing, 'herdCount', typed),
    word('grazing.eaten', grazing?.stayDays === undefined ? undefined : grazing.stayDays <= longestStayDays ? 'week' : 'until-gone'),
  );
  return { single };
};
