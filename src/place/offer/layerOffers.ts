import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import { soilOf } from './groundOffers.ts';
import { type OfferedRow, type OfferPart, offerMap, told, word } from './offered.ts';
import { textureWords } from './textureWords.ts';

/** Layers from the top down; which of them go first where not all fit is the order in which they lie. */
const layerRows = (place: Place, pasture: Pasture): readonly OfferedRow[] =>
  (soilOf(place, pasture)?.layers ?? []).flatMap((layer, index, all) => {
    const { thicknessIn, texture, surveyInPerIn } = layer;
    // One that is only half told is not offered: the form's example would stand in for the rest.
    if (thicknessIn === undefined || texture === undefined) return [];
    const cells = offerMap(
      told('layer.thickness', layer, 'thicknessIn'),
      word('layer.texture', textureWords(texture)),
      word('layer.heldFrom', surveyInPerIn === undefined ? 'texture' : 'survey'),
      told('layer.survey', layer, 'surveyInPerIn'),
      told('layer.stones', layer, 'stonesPercent'),
    );
    return [{ name: `Layer ${index + 1}`, size: all.length - index, cells }];
  });

export const part: OfferPart = ({ place, pasture }) => (pasture ? { tables: { layers: layerRows(place, pasture) } } : {});
