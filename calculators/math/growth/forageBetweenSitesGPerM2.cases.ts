import { checkList, tableChecks } from '../checks.ts';
import { forageBetweenSitesGPerM2, forageOfYearGPerM2 } from './forageBetweenSitesGPerM2.ts';

export default checkList('forageBetweenSitesGPerM2', [
  ...tableChecks({
    columns: ['g/m2'],
    text: `
      200  86.4
      321  159.0
      400  206.4
      600  326.4
      800  446.4
    `,
    what: (rain) => `Sites with ${rain} mm a year`,
    ours: (rain) => forageBetweenSitesGPerM2(Number(rain)),
    source: 'sala-1988',
    where: 'regional equation, worked out apart',
    seen: 'memory',
  }),
  {
    what: 'Response to rain from year to year against that between sites is the smaller',
    ours: () =>
      forageOfYearGPerM2(400) - forageOfYearGPerM2(300) < forageBetweenSitesGPerM2(400) - forageBetweenSitesGPerM2(300) ? 'smaller' : 'larger',
    printed: 'smaller',
    source: 'lauenroth-sala-1992',
    where: 'abstract: regional models have a steeper slope than long-term models',
    seen: 'print',
  },
]);
