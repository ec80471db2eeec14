import { checkList } from '../checks.ts';
import { erodibilityMetric, erosivityMetric, erosivityUs, soilLossMetric } from './soilLossMetric.ts';

const conversions = { source: 'foster-1981', where: 'table 2', seen: 'transcription' } as const;
const classes = { source: 'fire-ecology-5-1-2009', where: 'table 4', seen: 'transcription' } as const;
const range = { source: 'logan-1982', where: 'range of tolerances, t/ha', seen: 'transcription' } as const;

export default checkList('soilLossMetric', [
  { what: '1 ton/acre in t/ha', ours: () => soilLossMetric(1), printed: '2.242', ...conversions },
  { what: 'one US unit of R in MJ mm/(ha h yr)', ours: () => erosivityMetric(1), printed: '17.02', ...conversions },
  { what: 'one US unit of K in t ha h/(ha MJ mm)', ours: () => erodibilityMetric(1), printed: '0.1317', ...conversions },
  { what: '3 tons an acre, end of the tolerable class, t/ha', ours: () => soilLossMetric(3), printed: '6.7', ...classes },
  { what: '5 tons an acre, end of the low class, t/ha', ours: () => soilLossMetric(5), printed: '11.2', ...classes },
  { what: '10 tons an acre, end of the moderate class, t/ha', ours: () => soilLossMetric(10), printed: '22.4', ...classes },
  { what: '15 tons an acre, end of the high class, t/ha', ours: () => soilLossMetric(15), printed: '33.6', ...classes },
  { what: '1 ton an acre, least tolerance', ours: () => soilLossMetric(1), printed: '2', ...range },
  { what: '5 tons an acre, greatest tolerance', ours: () => soilLossMetric(5), printed: '11', ...range },
  {
    what: 'R of 2517.5 MJ mm/(ha h yr) in US units',
    ours: () => erosivityUs(2517.5),
    printed: '147.9',
    source: 'foster-1981',
    where: 'exact definitions, worked in another program',
    seen: 'computed',
  },
]);
