import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { totalAvailableWaterMm } from './totalAvailableWaterMm.ts';

const soils: Readonly<Record<string, readonly [fieldCapacity: number, wiltingPoint: number]>> = {
  'loamy-sand': [0.15, 0.06],
  silt: [0.32, 0.15],
  'silty-clay': [0.35, 0.23],
};
/** Root depth in meters and depletion fraction. */
const crops: Readonly<Record<string, readonly [rootDepth: number, fraction: number]>> = { onion: [0.4, 0.3], tomato: [0.8, 0.4], maize: [1.2, 0.55] };

export default checkList('totalAvailableWaterMm', [
  ...tableChecks({
    columns: ['onion-TAW', 'onion-RAW', 'tomato-TAW', 'tomato-RAW', 'maize-TAW', 'maize-RAW'],
    text: `
      loamy-sand  36  11  72   29  108  59
      silt        68  20  136  54  204  112
      silty-clay  48  14  96   38  144  79
    `,
    what: (soil, column) => `${column.endsWith('RAW') ? 'Readily' : 'Total'} available water, ${column.split('-')[0]} on ${soil.replace('-', ' ')}`,
    ours: (soil, column) => {
      const [crop = '', kind = ''] = column.split('-');
      const [fieldCapacityShare, wiltingPointShare] = needThere('totalAvailableWaterMm', soil, soils[soil]);
      const [rootDepthM, fraction] = needThere('totalAvailableWaterMm', crop, crops[crop]);
      const total = totalAvailableWaterMm({ fieldCapacityShare, wiltingPointShare, rootDepthM });
      return kind === 'RAW' ? fraction * total : total;
    },
    source: 'allen-1998',
    where: 'example 36',
    seen: 'print',
  }),
  {
    what: 'Tomato in silt, roots 0.8 m deep',
    ours: () => totalAvailableWaterMm({ fieldCapacityShare: 0.32, wiltingPointShare: 0.12, rootDepthM: 0.8 }),
    printed: '160',
    source: 'allen-1998',
    where: 'example 37',
    seen: 'print',
  },
]);
