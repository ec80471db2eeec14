import { printDay } from '../../../calculators/units/printQuantity.ts';
import { dayIn } from '../record/days.ts';
import { amount, type EarlierTest, type OfferPart, offerMap, word, yesNo } from './offered.ts';

/** The latest earlier test of a ground, to stand beside today's; nothing where none was made there. At a place of one pasture nobody has to choose it. */
export const part: OfferPart = ({ place, pasture, earlier: tests }) => {
  if (pasture === undefined || tests === undefined) return {};
  const isThere = ({ pastureIds }: EarlierTest): boolean =>
    pastureIds.includes(pasture.id) || (pastureIds.length === 0 && place.pastures.length === 1);
  const latest = tests.filter(isThere).toSorted((one, other) => other.day.localeCompare(one.day))[0];
  if (latest === undefined || latest.readings.length === 0) return {};
  const says = `visit of ${printDay(dayIn(latest.day))}`;
  const tool = latest.tool === '' ? '' : ` Then: ${latest.tool}.`;
  return {
    single: offerMap(word('earlier.beside', 'visit'), latest.isOtherSeason ? yesNo('earlier.alike', false) : []),
    tables: {
      earlier: latest.readings.map((reading, index) => ({
        name: `Reading ${index + 1} of ${says}`,
        size: 0,
        cells: offerMap(amount('earlier.rate', Number(reading.toPrecision(4)), says)),
      })),
    },
    besides: [
      {
        key: 'earlier.rate',
        say: `${pasture.name}: the readings of your ${says} stand beside today’s.${tool} Only the same tool, as much water and ground as wet can be compared.`,
      },
    ],
  };
};
