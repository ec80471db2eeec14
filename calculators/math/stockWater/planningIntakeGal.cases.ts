import { checkList } from '../checks.ts';
import { intakeByWeightGal, planningIntakeGal } from './planningIntakeGal.ts';

const from = (source: string, airF: number): number => {
  const found = planningIntakeGal('cow-nursing', airF).bySource.find((each) => each.source === source);
  if (found === undefined) throw new RangeError(`planningIntakeGal has no list of ${source}`);
  return found.galPerDay;
};

export default checkList('planningIntakeGal', [
  {
    what: 'cow at 95 degrees by the rule of 0.4 gallons a degree, gallons a day',
    ours: () => from('noble-water-1999', 95),
    printed: '24',
    source: 'noble-water-1999',
    where: 'fourth paragraph',
    seen: 'print',
  },
  {
    what: 'average horse at a gallon for each 100 lb, 1,000 lb, gallons a day',
    ours: () => intakeByWeightGal(1000, 1),
    printed: '10',
    source: 'k-state-watering-handbook',
    where: 'water consumption of livestock',
    seen: 'print',
  },
]);
