import { checkList } from '../checks.ts';
import { toleranceTonPerAc } from './toleranceTonPerAc.ts';

const handbook = { source: 'nrcs-nssh-430-vi', where: 'T factor, classes', seen: 'transcription' } as const;

export default checkList('toleranceTonPerAc', [
  { what: 'shallow or fragile soil', ours: () => toleranceTonPerAc(8, false), printed: '1', ...handbook },
  { what: 'deep soil, least subject to damage', ours: () => toleranceTonPerAc(Infinity, true), printed: '5', ...handbook },
]);
