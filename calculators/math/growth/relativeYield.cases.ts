import { checkList, tableChecks } from '../checks.ts';
import { relativeYield } from './relativeYield.ts';

export default checkList(
  'relativeYield',
  tableChecks({
    columns: ['.9', '.8', '.7', '.6', '.5', '.3'],
    text: `
      1.1   .89   .78  .67   .56  .45   .23
      1.0   .9    .8   .7    .6   .5    .3
      .85   .915  .83  .745  .66  .575  .405
    `,
    what: (factor, share) => `Yield with Ky ${factor} and ${share} of full use`,
    ours: (factor, share) => relativeYield(Number(factor), Number(share)),
    source: 'allen-1998',
    where: 'eq. 90, worked out apart',
    seen: 'computed',
  }),
);
