import { checkList, tableChecks } from '../checks.ts';
import { inverseNormal } from './inverseNormal.ts';

export default checkList(
  'inverseNormal',
  tableChecks({
    columns: ['z'],
    text: `
      1e-10   -6.361340902404
      1e-6    -4.753424308823
      .0001   -3.719016485456
      .001    -3.090232306168
      .005    -2.575829303549
      .01     -2.326347874041
      .025    -1.959963984540
      .05     -1.644853626951
      .1      -1.281551565545
      .2      -0.841621233573
      .25     -0.674489750196
      .3      -0.524400512708
      .4      -0.253347103136
      .5      0
    `,
    what: (probability) => `Value that ${probability} of a normal distribution lies below`,
    ours: (probability) => inverseNormal(Number(probability)),
    source: 'mpmath',
    where: 'inverse of ncdf',
    seen: 'computed',
  }),
);
