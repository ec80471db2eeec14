import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { rootZoneWater, type SoilLayer } from './rootZoneWater.ts';

const full = (thicknessIn: number, availableInPerFt: number): SoilLayer => ({
  thicknessIn,
  availableInPerFt,
  stoneVolumePercent: 0,
  filledPercent: 100,
});
const tutorial = { source: 'precisionag-irrigation-tutorial', seen: 'print' } as const;
const layered = [full(12, 0.75), full(24, 1.6), full(12, 2.2)] as const;
const [top, second, third] = layered;

/** Water contents at field capacity and wilting point, and rooting depths in meters, of the worked example. */
const soils: Readonly<Record<string, number>> = { 'loamy-sand': 0.15 - 0.06, silt: 0.32 - 0.15, 'silty-clay': 0.35 - 0.23 };
const crops: Readonly<Record<string, number>> = { onion: 0.4, tomato: 0.8, maize: 1.2 };

export default checkList('rootZoneWater', [
  { what: 'layer 1, 0 to 12 in at 0.75 in/ft', ours: () => rootZoneWater([top], 12).holdsIn, printed: '0.75', where: 'question 7', ...tutorial },
  { what: 'layer 2, 12 to 36 in at 1.60 in/ft', ours: () => rootZoneWater([second], 24).holdsIn, printed: '3.20', where: 'question 7', ...tutorial },
  { what: 'layer 3, 36 to 48 in at 2.20 in/ft', ours: () => rootZoneWater([third], 12).holdsIn, printed: '2.20', where: 'question 7', ...tutorial },
  { what: 'the three layers, 0 to 48 in', ours: () => rootZoneWater(layered, 48).holdsIn, printed: '6.15', where: 'question 7', ...tutorial },
  { what: '1.25 in/ft, roots 4 ft deep', ours: () => rootZoneWater([full(48, 1.25)], 48).holdsIn, printed: '5', where: 'question 8', ...tutorial },
  {
    what: '1.25 in/ft, roots 4 ft deep, 60 % used: inches gone',
    ours: () => rootZoneWater([{ ...full(48, 1.25), filledPercent: 40 }], 48).missingIn,
    printed: '3',
    where: 'question 9',
    ...tutorial,
  },
  {
    what: 'field capacity 48 %, wilting point 28 %: inches in a foot',
    ours: () => rootZoneWater([full(12, 12 * (0.48 - 0.28))], 12).holdsIn,
    printed: '2.40',
    where: 'question 2',
    ...tutorial,
  },
  {
    what: 'field capacity 35.1 %, wilting point 10.4 %: inches in a foot',
    ours: () => rootZoneWater([full(12, 12 * (0.351 - 0.104))], 12).holdsIn,
    printed: '2.96',
    source: 'arizona-swes200-quiz',
    where: 'question 2',
    seen: 'transcription',
  },
  ...tableChecks({
    columns: Object.keys(crops),
    text: `
      loamy-sand 36 72  108
      silt       68 136 204
      silty-clay 48 96  144`,
    what: (soil, crop) => `${soil.replace('-', ' ')} under ${crop}: total available water, mm`,
    ours: (soil, crop) => {
      const depthIn = (needThere('rootZoneWater', crop, crops[crop]) * 1000) / 25.4;
      return rootZoneWater([full(depthIn, 12 * needThere('rootZoneWater', soil, soils[soil]))], depthIn).holdsIn * 25.4;
    },
    source: 'allen-1998',
    where: 'example 36',
    seen: 'print',
  }),
]);
