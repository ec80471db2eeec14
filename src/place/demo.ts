import * as v from 'valibot';
import placeData from '../../content/place/place.json' with { type: 'json' };
import { placeSchema as contentSchema } from '../../content/place/schema.ts';
import { placeVersion } from './model/migrations/place.ts';
import { type Place, placeSchema } from './model/place.ts';

/** The invented place as one that can be opened, looked at and thrown away. Never without its mark. A chunk of its own: only its button fetches it. */
export function demoPlace(id: string, changedBy: string, changedAt: string): Place {
  const demo = v.parse(contentSchema, placeData);
  return v.parse(placeSchema, {
    id,
    rev: 1,
    past: ['1-demo00'],
    changedBy,
    changedAt,
    v: placeVersion,
    name: demo.name,
    latitudeDeg: demo.latitudeDeg,
    rainClass: 'middle',
    isDemo: true,
    season: demo.season,
    growth: { curve: 'answers', ...demo.growth },
    soils: demo.soils.map(({ id, name, texture, soilGroup, organicMatterPercent, depthIn }) => ({
      id,
      name,
      texture,
      soilGroup,
      organicMatterPercent,
      depthIn,
    })),
    pastures: demo.pastures.map(({ id, name, areaAc, soil, use, cover, groundCoverPercent, grazing, paddockCount, grass }) => ({
      id,
      name,
      areaAc,
      soilId: soil,
      use,
      isCounted: use === 'grazed',
      cover,
      groundCoverPercent,
      grazing,
      ...grass,
      paddocks: Array.from({ length: paddockCount }, (_, index) => ({ id: `${id}-${index + 1}`, name: `${name} ${index + 1}` })),
    })),
    herd: demo.herd.map(({ stock, name, countHead, weightLb, births }) => ({
      id: stock,
      name,
      kind: stock,
      countHead,
      weightLb,
      ...(births === null ? {} : { birthsDay: births.middleDay }),
    })),
    hay: {
      stacks: demo.hayBarn.stacks.map(({ hay, baleCount, baleLb, moisturePercent, baledDay, storedAs }, index) => ({
        id: `stack-${index + 1}`,
        name: hay,
        baleCount,
        baleLb,
        weighedAt: 'baling',
        moisturePercent,
        baledDay,
        storedAs,
      })),
    },
    water: [],
  });
}
