import { checkList } from '../checks.ts';
import { compositeCurveNumber, compositeRunoffIn } from './compositeCurveNumber.ts';
import { stormRunoffIn } from './stormRunoffIn.ts';

const pasture = [
  { areaAc: 75, curveNumber: 61 },
  { areaAc: 175, curveNumber: 74 },
];
const lots = [
  { areaAc: 75, curveNumber: 70 },
  { areaAc: 100, curveNumber: 80 },
  { areaAc: 75, curveNumber: 74 },
];
const rotation = [
  { areaAc: 400, curveNumber: 75 },
  { areaAc: 230, curveNumber: 69 },
];

export default checkList('compositeCurveNumber', [
  {
    what: '75 ac at 61, 175 ac at 74',
    ours: () => compositeCurveNumber(pasture),
    printed: '70.1',
    source: 'tr55-1986',
    where: 'example 2-1',
    seen: 'memory',
  },
  {
    what: 'the same ground, 6.0 in of rain at the rounded number 70',
    ours: () => stormRunoffIn({ rainIn: 6, curveNumber: Math.round(compositeCurveNumber(pasture)), abstractionRatio: 0.2 }),
    printed: '2.81',
    source: 'tr55-1986',
    where: 'example 2-1; also table 2-1',
    seen: 'memory',
  },
  {
    what: '75 ac at 70, 100 ac at 80, 75 ac at 74',
    ours: () => compositeCurveNumber(lots),
    printed: '75.2',
    source: 'tr55-1986',
    where: 'example 2-2',
    seen: 'memory',
  },
  {
    what: 'the same ground, 6.0 in of rain at the rounded number 75',
    ours: () => stormRunoffIn({ rainIn: 6, curveNumber: Math.round(compositeCurveNumber(lots)), abstractionRatio: 0.2 }),
    printed: '3.28',
    source: 'tr55-1986',
    where: 'example 2-2; also table 2-1',
    seen: 'memory',
  },
  {
    what: '400 ac at 75, 230 ac at 69',
    ours: () => compositeCurveNumber(rotation),
    printed: '72.8',
    source: 'nrcs-neh630-10-2004',
    where: 'example 10-3',
    seen: 'memory',
  },
  {
    what: 'the same ground, 5.1 in of rain, runoff weighted',
    ours: () => compositeRunoffIn({ parts: rotation, rainIn: 5.1, abstractionRatio: 0.2 }),
    printed: '2.35',
    source: 'nrcs-neh630-10-2004',
    where: 'example 10-3',
    seen: 'memory',
  },
  {
    what: 'the same ground, 5.1 in of rain at the rounded number 73',
    ours: () => stormRunoffIn({ rainIn: 5.1, curveNumber: Math.round(compositeCurveNumber(rotation)), abstractionRatio: 0.2 }),
    printed: '2.36',
    source: 'nrcs-neh630-10-2004',
    where: 'example 10-3',
    seen: 'memory',
  },
]);
