import type { Place } from '../model/place.ts';
import { type OfferMap, type OfferPart, offerMap, told, typedUnder, word } from './offered.ts';

function toolOffers({ tools, typed: all }: Place): OfferMap {
  if (tools === undefined) return offerMap();
  const frame = tools.frame?.kind === undefined ? undefined : tools.frame;
  const typed = { typed: typedUnder(all, 'tools.') };
  const ofFrame = { typed: typedUnder(all, 'tools.frame.') };
  return offerMap(
    word('tools.frame', frame?.kind),
    told('tools.frameAround', frame, 'aroundIn', ofFrame),
    told('tools.frameAcross', frame, 'acrossIn', ofFrame),
    told('tools.frameLength', frame, 'lengthIn', ofFrame),
    told('tools.frameWidth', frame, 'widthIn', ofFrame),
    told('tools.ringBore', tools, 'ringBoreIn', typed),
    told('tools.ringInserted', tools, 'ringInsertedIn', typed),
    told('tools.pouring', tools, 'pouringMl', typed),
    told('tools.canAcross', tools, 'canAcrossIn', typed),
    told('tools.canTall', tools, 'canTallIn', typed),
    told('tools.pace', tools, 'paceFt', typed),
  );
}

export const part: OfferPart = ({ place }) => ({ single: toolOffers(place) });
