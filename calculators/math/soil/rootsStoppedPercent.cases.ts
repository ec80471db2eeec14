import { checkList, tableChecks } from '../checks.ts';
import { rootsStoppedPercent } from './rootsStoppedPercent.ts';

export default checkList('rootsStoppedPercent', [
  ...tableChecks({
    columns: ['mean', 'lowest', 'highest'],
    text: `
      50 15.25 2  38
      60 55    36 80
      70 82    76 97
      80 93    81 100`,
    what: (removed, column) => `${removed} % of the top taken: ${column} of the four tests, % of roots stopped`,
    ours: (removed, column) => {
      const { meanPercent, lowPercent, highPercent } = rootsStoppedPercent(Number(removed));
      return column === 'mean' ? meanPercent : column === 'lowest' ? lowPercent : highPercent;
    },
    source: 'crider-1955',
    where: 'the four tests, summed up by hand',
    seen: 'computed',
  }),
]);
