import { moistureFeels } from '../../model/visit.ts';
import { amount, choice, day, type PlaceField, text } from './field.ts';

/** The head of a visit. */
export const visitFields: readonly PlaceField[] = [
  day('day', 'Day of the visit'),
  text('by', 'Written by', { help: 'It stands in the note for the producer.' }),
  text('present', 'Who was there', { help: 'With commas between the names.' }),
];
/** What two visits are held against each other by. */
export const groundFields: readonly PlaceField[] = [
  choice(
    'ground.moistureFeel',
    'How the ground felt',
    moistureFeels,
    {},
    { field: 'Squeeze a handful: dry falls apart, moist holds, wet leaves water on the hand.' },
  ),
  amount('ground.daysSinceRain', 'Days since rain', 'd', [0, 1000], 3),
  amount('ground.fiveDayRainIn', 'Rain of the last five days', 'in', [0, 50], 0.5),
  text('spots', 'Where', { help: 'In words, so that the same spots are found again: third post from the gate.' }),
];
export const nextFields: readonly PlaceField[] = [day('nextDay', 'Day of the next look')];
export const stepFields: readonly PlaceField[] = [text('what', 'What'), text('who', 'Who'), day('byDay', 'By when')];
