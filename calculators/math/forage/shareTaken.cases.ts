import { checkList } from '../checks.ts';
import { shareTaken } from './shareTaken.ts';

/** Any classes with counts have a mean: these were counted for other ends, and their means are printed. */
const meanOf = (classes: readonly (readonly [takenPercent: number, plantsCount: number])[]): number =>
  shareTaken(classes.map(([takenPercent, plantsCount]) => ({ takenPercent, plantsCount }))).takenPercent;

export default checkList('shareTaken', [
  {
    what: '200 years of a corps by their deaths from horses’ kicks, 0 to 4: mean',
    ours: () =>
      meanOf([
        [0, 109],
        [1, 65],
        [2, 22],
        [3, 3],
        [4, 1],
      ]),
    printed: '0.61',
    source: 'horse-kicks-200',
    where: 'mean of a year and a unit, 122/200',
    seen: 'transcription',
  },
  {
    what: '280 years of a corps by their deaths from horses’ kicks, 0 to 4: mean',
    ours: () =>
      meanOf([
        [0, 144],
        [1, 91],
        [2, 32],
        [3, 11],
        [4, 2],
      ]),
    printed: '0.7',
    source: 'horse-kicks-280',
    where: '196/280, deaths in a year and a corps',
    seen: 'print',
  },
  {
    what: '110 values in classes of 5, by the middle of each class: mean',
    ours: () =>
      meanOf([
        [7.5, 2],
        [12.5, 9],
        [17.5, 29],
        [22.5, 54],
        [27.5, 11],
        [32.5, 5],
      ]),
    printed: '21.05',
    source: 'studynovo-grouped',
    where: 'steps 1 and 2',
    seen: 'print',
  },
]);
