import { checkList } from '../checks.ts';
import { hargreavesMm } from './hargreavesMm.ts';

export default checkList('hargreavesMm', [
  {
    what: '28 to 38 °C, mean 35 °C, Ra 38.94 MJ',
    ours: () => hargreavesMm({ minTempC: 28, maxTempC: 38, meanTempC: 35, extraterrestrialMj: 38.93715 }),
    printed: '6.1',
    source: 'mehta-2006',
    where: 'worked example',
    seen: 'transcription',
  },
]);
