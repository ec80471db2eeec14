import { amount } from './field.ts';

// Apart from the season's other fields: the record asks for this one alone.
export const yardstickField = amount('yardstickLbPerDay', 'One of your main kind eats a day', 'lb/d', [0.5, 100], 30, {
  help: 'Dry forage. The measure of a stock-day: set it once, for changing it counts all years anew.',
});
