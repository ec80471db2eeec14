import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { animalUnitsByIntake } from './animalUnitsByIntake.ts';

/** Weight, lb, and intake, percent of weight, as the chart gives them. */
const animals: Readonly<Record<string, readonly [weightLb: number, intakePercent: number]>> = {
  'beef-cow': [1000, 2.6],
  horse: [1100, 3.0],
  ewe: [130, 3.5],
  'Spanish-nanny': [90, 4.5],
  'Boer-cross-nanny': [125, 4.0],
  'Angora-nanny': [70, 4.5],
  'white-tailed-deer': [100, 3.5],
  'mule-deer': [135, 3.5],
  pronghorn: [90, 4.0],
  'axis-deer': [150, 3.5],
  'sika-deer': [145, 3.5],
  elk: [800, 3.0],
  'red-deer': [350, 3.5],
  'sambar-deer': [400, 3.5],
  'sable-antelope': [500, 3.0],
  blackbuck: [75, 4.0],
  addax: [250, 3.5],
  eland: [1000, 2.5],
  kudu: [450, 3.5],
  sitatunga: [200, 3.5],
  gazelle: [85, 4.0],
  'Barbado-sheep': [120, 3.5],
};

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
