import { csvParse } from 'd3-dsv';
import * as v from 'valibot';
import { dayOfYear } from '../../calculators/math/weather/dayOfYear.ts';
import { generatedRainMm } from '../../calculators/math/weather/generatedRainMm.ts';
import { seededRandom } from '../../calculators/math/weather/seededRandom.ts';
import { temperatureDepartures } from '../../calculators/math/weather/temperatureDepartures.ts';
import { type WetDayChain, wetDayShare } from '../../calculators/math/weather/wetDayChain.ts';
import { dayMs } from '../../calculators/units/days.ts';
import { type WeatherDay, type WeatherSettings, weatherDaySchema } from './weatherSchema.ts';

const mmPerIn = 25.4;
/** The least that the gauge shows; a wet day shows at least this. */
const gaugeStepIn = 0.01;
const usualYearDays = 365.25;

type Month = WeatherSettings['months'][number];

/** The rain chain of a month in the units of the math package. */
const chainOf = (month: Month): WetDayChain => ({
  wetAfterWet: month.wetAfterWetChance,
  wetAfterDry: month.wetAfterDryChance,
  shape: month.amountShape,
  scaleMm: month.amountScaleIn * mmPerIn,
});

interface CalendarDay {
  readonly day: string;
  readonly month: number;
  readonly dayOfYear: number;
}

function calendar(firstDay: string, lastDay: string): CalendarDay[] {
  const days: CalendarDay[] = [];
  for (let at = Date.parse(firstDay); at <= Date.parse(lastDay); at += dayMs) {
    const day = new Date(at).toISOString().slice(0, 10);
    const [year = 0, month = 0, date = 0] = day.split('-').map(Number);
    const isLeapYear = new Date(Date.UTC(year, 1, 29)).getUTCMonth() === 1;
    days.push({ day, month, dayOfYear: dayOfYear(month, date, isLeapYear) });
  }
  return days;
}

/**
 * High and low that a day has on average, wet and dry together: mean + swing cos(2π (J − Jw) / 365.25), with J = `ofDay`, Jw the warmest day.
 */
function usualTemperatureF({ temperature: curve }: WeatherSettings, ofDay: number): { readonly highF: number; readonly lowF: number } {
  const cosine = Math.cos((2 * Math.PI * (ofDay - curve.warmestDayOfYear)) / usualYearDays);
  return { highF: curve.highMeanF + curve.highSwingF * cosine, lowF: curve.lowMeanF + curve.lowSwingF * cosine };
}

/** Makes the whole record from the settings; the same settings give the same record. */
export function weatherRecord(settings: WeatherSettings): WeatherDay[] {
  const { temperature, months, seed } = settings;
  const days = calendar(settings.firstDay, settings.lastDay);
  const rainMm = generatedRainMm({ months: days.map(({ month }) => month), chains: months.map(chainOf), random: seededRandom(seed) });
  // Temperatures draw from a source of their own, so that a change to them leaves the rain as it was.
  const departures = temperatureDepartures({ ...temperature, random: seededRandom(seed + 1) });
  return days.map(({ day, month, dayOfYear: ofDay }, index) => {
    const ofMonth = months[month - 1];
    if (ofMonth === undefined) throw new RangeError(`weatherRecord needs settings for month ${month}`);
    const rain = rainMm[index] ?? 0;
    const departure = departures();
    const usual = usualTemperatureF(settings, ofDay);
    // Measured from the month's share of wet days, the shift of wet days leaves the month's mean on the curve.
    const wetter = (rain > 0 ? 1 : 0) - wetDayShare(ofMonth.wetAfterWetChance, ofMonth.wetAfterDryChance);
    const highF = usual.highF - temperature.wetDayHighDropF * wetter + ofMonth.highSpreadF * departure.high;
    const lowF = usual.lowF + temperature.wetDayLowRiseF * wetter + ofMonth.lowSpreadF * departure.low;
    return {
      day,
      rainIn: rain > 0 ? Math.max(gaugeStepIn, Math.round(rain / mmPerIn / gaugeStepIn) * gaugeStepIn) : 0,
      highF: Math.round(highF),
      lowF: Math.round(Math.min(lowF, highF - temperature.leastDailyRangeF)),
    };
  });
}

/** The record as the file holds it. */
export const weatherCsv = (record: readonly WeatherDay[]): string =>
  ['day,rainIn,highF,lowF', ...record.map(({ day, rainIn, highF, lowF }) => `${day},${rainIn.toFixed(2)},${highF},${lowF}`), ''].join('\n');

/**
 * Reads the file back.
 * @throws ValiError if a cell is missing or no number
 */
export const readWeather = (text: string): WeatherDay[] =>
  csvParse(text, ({ day, rainIn, highF, lowF }) =>
    v.parse(weatherDaySchema, { day, rainIn: numberIn(rainIn), highF: numberIn(highF), lowF: numberIn(lowF) }),
  );
/** An empty cell is no zero. */
const numberIn = (cell: string | undefined): number => (cell === undefined || cell.trim() === '' ? Number.NaN : Number(cell));
