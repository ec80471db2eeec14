import { checkList } from '../checks.ts';
import { flowVelocityFtPerS, shallowVelocityFtPerS, travelHours } from './flowVelocityFtPerS.ts';
import { sheetFlowHours } from './sheetFlowHours.ts';

const example = { source: 'tr55-1986', where: 'example 3-1', seen: 'memory' } as const;
const sheet = () => sheetFlowHours({ roughness: 0.24, lengthFt: 100, twoYearRainIn: 3.6, slope: 0.01 });
const shallow = () => travelHours(1400, shallowVelocityFtPerS(0.01, 'unpaved'));
const channelVelocity = () => flowVelocityFtPerS({ hydraulicRadiusFt: 27 / 28.2, slope: 0.005, roughness: 0.05 });
const channel = () => travelHours(7300, channelVelocity());

export default checkList('sheetFlowHours', [
  { what: 'dense grass, 100 ft, 3.6 in, slope 0.01', ours: sheet, printed: '0.30', ...example },
  { what: 'unpaved, 1,400 ft, slope 0.01', ours: shallow, printed: '0.24', ...example },
  { what: 'channel of 27 square feet, wetted edge 28.2 ft, slope 0.005: velocity', ours: channelVelocity, printed: '2.05', ...example },
  { what: 'the same channel, 7,300 ft', ours: channel, printed: '0.99', ...example },
  { what: 'all three together', ours: () => sheet() + shallow() + channel(), printed: '1.53', ...example },
]);
