import { checkList, tableChecks } from '../checks.ts';
import { availableFromHayYield } from './availableFromHayYield.ts';

export default checkList('availableFromHayYield', [
  ...tableChecks({
    columns: ['available'],
    text: `
      5.5 2200
      5.0 2000
      4.5 1800
      4.0 1600
      3.5 1400
      3.0 1200
      2.5 1000
    `,
    what: (tons) => `Hay yield of ${tons} tons: lb an acre at each grazing`,
    ours: (tons) => availableFromHayYield({ hayTonsPerAc: Number(tons), grazings: 5 }),
    source: 'cornell-grazing-worksheet',
    where: 'Step 2, forage availability estimates',
    seen: 'print',
  }),
]);
