import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { animalUnitsByIntake } from './animalUnitsByIntake.ts';
import { animals } from './dailyIntakeLb.cases.ts';

export default checkList('animalUnitsByIntake', [
  ...tableChecks({
    columns: ['units'],
    text: `
      beef-cow 1
      horse 1.27
      ewe 0.18
      Spanish-nanny 0.16
      Boer-cross-nanny 0.19
      Angora-nanny 0.12
      white-tailed-deer 0.13
      mule-deer 0.18
      pronghorn 0.14
      axis-deer 0.20
      sika-deer 0.20
      elk 0.92
      red-deer 0.47
      sambar-deer 0.54
      sable-antelope 0.58
      blackbuck 0.12
      addax 0.34
      eland 0.96
      kudu 0.61
      sitatunga 0.27
      gazelle 0.13
      Barbado-sheep 0.16
    `,
    what: (animal) => `Animal units: ${animal}`,
    ours: (animal) => {
      const [weightLb, intakePercent] = needThere('animalUnitsByIntake', animal, animals[animal]);
      return animalUnitsByIntake({ weightLb, intakePercent, lbPerDay: 26 });
    },
    source: 'texas-animal-units',
    where: 'Chart, animal units per head',
    seen: 'transcription',
  }),
]);
