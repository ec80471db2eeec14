import { checkList } from '../checks.ts';
import { maintenanceEnergyMcalPerKg } from './maintenanceEnergyMcalPerKg.ts';

export default checkList('maintenanceEnergyMcalPerKg', [
  {
    what: 'TDN 50',
    ours: () => maintenanceEnergyMcalPerKg(50),
    printed: '0.968',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
  {
    what: 'TDN 60',
    ours: () => maintenanceEnergyMcalPerKg(60),
    printed: '1.310',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
]);
