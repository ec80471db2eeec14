// The office file as a person fills it in: eight steps, and what each field is called, in words. Forms draw it, and whatever is wrong is told by it.
import { months as monthNames } from '../../../calculators/units/months.ts';
import { hayCrops } from '../../../content/local/schema.ts';
import { choice, date, monthDay, months, number, type OfficeField, words } from './field.ts';

export interface OfficeSection {
  /** Path in the file: `values.hayPrice`. */
  readonly at: string;
  readonly title: string;
  readonly says?: string;
  /** Several of a kind: what one is called, the words of the button that adds one, and the field it is known by. */
  readonly rows?: { readonly one: string; readonly add: string; readonly by: string };
  readonly fields: readonly OfficeField[];
}
export interface OfficeStep {
  readonly title: string;
  readonly says: string;
  readonly sections: readonly OfficeSection[];
}

const source = words('source', 'Where it comes from', 'a publication, or the words common practice', {
  help: 'A publication and its year. “common practice” is an answer.',
});
const seen = words('seen', 'Seen', 'a day, a month or a year, such as 2026-09', { help: 'Such as 2026-09-14, 2026-09 or 2026.', isToday: true });
const ofPrices = (help: string) => words('of', 'Where, and of what', 'a few words, such as county auction, large rounds', { help });
const usdTon = 'dollars a ton, such as 165';
const inches = 'inches, such as 4';
const lbAc = 'pounds an acre, such as 2400';
const cwt = 'dollars a hundredweight, such as 280';
const head = 'dollars a head, such as 2500';

export const officeSteps: readonly OfficeStep[] = [
  {
    title: 'Your office',
    says: 'Its name stands at the foot of every page, and over the values that it gives.',
    sections: [
      {
        at: 'head',
        title: 'Your office',
        fields: [
          words('name', 'Name', 'a name, such as Example County office'),
          words('where', 'What it serves', 'a few words: its counties, its kind of ground'),
          words('address', 'Street and town', 'an address as on an envelope'),
          words('phone', 'Phone', 'a number to call, such as 555-0100'),
          words('copyAt', 'Web address of your copy', 'an address that begins with https://', {
            help: 'Links and printed sheets then lead there. Leave it empty if there is none.',
          }),
          date('valuesDay', 'These values are of', 'a day of the calendar, such as 2026-09-14', { isToday: true }),
        ],
      },
    ],
  },
  {
    title: 'People to call',
    says: 'The national lines stand on every copy and cannot be taken out. Yours come before them.',
    sections: [
      {
        at: 'values.talkToSomeone.lines',
        title: 'Lines of your own',
        rows: { one: 'Line', add: 'Add a line to call', by: 'who' },
        fields: [
          words('who', 'Who answers', 'a name, such as County farm-stress line'),
          words('reach', 'Number, and how to use it', 'a whole number to call, such as call or text (406) 555-0100', { isDialed: true }),
          words('hours', 'Hours', 'when somebody answers, such as weekdays 8 to 5'),
          source,
        ],
      },
      {
        at: 'values.talkToSomeone',
        title: 'Someone near',
        fields: [
          words('near', 'People close by', 'people close by, such as your own doctor, a neighbor, your pastor', {
            help: 'A sentence. This cannot be empty.',
            isLong: true,
          }),
        ],
      },
    ],
  },
  {
    title: 'Prices',
    says: 'Forms offer these where somebody has none of their own. Low and high may stay empty.',
    sections: [
      {
        at: 'values.hayPrice',
        title: 'Hay',
        says: 'Of one kind of hay. Low, likely and high are grades of it.',
        fields: [
          choice('crop', 'Kind of hay', Object.fromEntries(hayCrops.map((crop) => [crop, crop]))),
          ofPrices('Where it was sold, how it was baled, which grades. Not the kind of hay again.'),
          number('lowUsdPerTon', 'Hay, low', usdTon),
          number('likelyUsdPerTon', 'Hay, likely', usdTon),
          number('highUsdPerTon', 'Hay, high', usdTon),
          seen,
          source,
        ],
      },
      {
        at: 'values.stockPrices',
        title: 'Calves and cows',
        fields: [
          ofPrices('Which sale, which weights.'),
          number('calfEarlyUsdPerCwt', 'Calf, weaned early', cwt),
          number('calfUsualUsdPerCwt', 'Calf, at the usual weight', cwt),
          number('cowSaleUsd', 'Cow, sold', head),
          number('buyBackLowUsd', 'Cow, bought back, low', head),
          number('buyBackLikelyUsd', 'Cow, bought back, likely', head),
          number('buyBackHighUsd', 'Cow, bought back, high', head),
          seen,
          source,
        ],
      },
      {
        at: 'values.freight',
        title: 'Freight',
        fields: [ofPrices('How far, and how large a load.'), number('usdPerLoad', 'Freight for a load', 'dollars a load, such as 400'), seen, source],
      },
      {
        at: 'values.interest',
        title: 'Interest',
        fields: [ofPrices('Which loan.'), number('percent', 'Interest', 'percent a year, such as 8'), seen, source],
      },
    ],
  },
  {
    title: 'Heights',
    says: 'The first row is the one that forms offer. Start stands at least two inches over stop.',
    sections: [
      {
        at: 'values.stubble.rows',
        title: 'Heights to start and to stop',
        rows: { one: 'Forage', add: 'Add what grows there', by: 'forage' },
        fields: [
          words('forage', 'What grows there', 'a name, such as tall fescue'),
          number('startIn.0', 'Start grazing, low', inches),
          number('startIn.1', 'Start grazing, high', inches),
          number('stopIn.0', 'Stop, low', inches),
          number('stopIn.1', 'Stop, high', inches),
          number('leaveLbPerAc.0', 'Or leave on the ground, low', 'pounds an acre, such as 750'),
          number('leaveLbPerAc.1', 'Or leave on the ground, high', 'pounds an acre, such as 1000'),
          source,
        ],
      },
    ],
  },
  {
    title: 'Yields and growth',
    says: 'Poor, normal and good are for years that were measured or rated as such.',
    sections: [
      {
        at: 'values.yields',
        title: 'What an acre grows in a year',
        fields: [
          words('of', 'What was measured, and where', 'a few words, such as tall fescue, plots of the county farm, dry weight'),
          number('poorLbPerAc', 'Poor year', lbAc),
          number('normalLbPerAc', 'Normal year', lbAc),
          number('goodLbPerAc', 'Good year', lbAc),
          source,
        ],
      },
      {
        at: 'values.growthMonths',
        title: 'When grass grows',
        fields: [
          words('of', 'Which grass', 'a few words, such as cool-season pasture'),
          choice('startMonth', 'Growth starts in', monthNames),
          choice('bestMonth', 'It is best in', monthNames),
          choice('quitMonth', 'It quits after', monthNames),
          choice('fallFlush', 'Growth in the fall', { none: 'None', some: 'Some', much: 'Much' }),
          source,
        ],
      },
      {
        at: 'values.growthCurve.curves',
        title: 'Curves of the year’s growth',
        rows: { one: 'Curve', add: 'Add a curve', by: 'name' },
        fields: [
          words('name', 'Which grass, and where', 'a name, such as cool-season grass, county farm'),
          months('percentByMonth', 'Percent of the year’s growth', 'percent, such as 10; the twelve months make 100'),
          source,
        ],
      },
    ],
  },
  {
    title: 'Rest, water and rain',
    says: 'What plants ask of the ground and the sky.',
    sections: [
      {
        at: 'values.restDays',
        title: 'Days of rest',
        fields: [
          words('says', 'Of which grass', 'a few words, such as tall fescue and clover'),
          number('fastDays', 'Rest in fast growth', 'days, such as 25'),
          number('slowDays', 'Rest in slow growth', 'days, such as 45'),
          source,
        ],
      },
      {
        at: 'values.waterUse',
        title: 'Water that pasture uses',
        says: 'Months without growth stay empty.',
        fields: [
          words('of', 'Of which pasture', 'a few words, such as grass pasture that has water'),
          months('inPerDay', 'Water use', 'inches a day, such as 0.18'),
          source,
        ],
      },
      {
        at: 'values.rainMonths',
        title: 'Rain by month',
        fields: [
          words('station', 'Station and years', 'a name, such as Example City, 1991-2020'),
          choice('are', 'The twelve are', { normals: 'Averages (normals)', medians: 'Medians' }, 'Triggers for a dry spring take medians.'),
          months('inches', 'Rain', 'inches, such as 2.4'),
          source,
        ],
      },
      {
        at: 'values.erosivity',
        title: 'Rain factor',
        says: 'R of the soil-loss equation, in US units.',
        fields: [
          words('says', 'Where it holds', 'a few words, such as the whole county'),
          number('low', 'Rain factor, low', 'R in US units, such as 90'),
          number('likely', 'Rain factor, likely', 'R in US units, such as 110'),
          number('high', 'Rain factor, high', 'R in US units, such as 130'),
          source,
        ],
      },
    ],
  },
  {
    title: 'Dates and sowing',
    says: 'Days to decide by, and what can be sown by when.',
    sections: [
      {
        at: 'values.decisionDates',
        title: 'Days to decide by',
        rows: { one: 'Date', add: 'Add a day to decide by', by: 'says' },
        fields: [monthDay('date', 'By', 'month and day, such as 06-30'), words('says', 'What to decide', 'a sentence', { isLong: true }), source],
      },
      {
        at: 'values.sowingDates',
        title: 'Sowing',
        rows: { one: 'Crop', add: 'Add a feed crop', by: 'crop' },
        fields: [
          words('crop', 'Feed crop', 'a name, such as oats'),
          monthDay('from', 'Sow from', 'month and day, such as 08-10'),
          monthDay('by', 'Until', 'month and day, such as 09-10'),
          words('says', 'Besides', 'a sentence, or nothing'),
          source,
        ],
      },
      {
        at: 'values.frost',
        title: 'First killing frost',
        fields: [
          words('of', 'Where, and in how many years', 'a few words, such as Example City, half of all years'),
          monthDay('firstDay', 'First killing frost', 'month and day, such as 10-15'),
          source,
        ],
      },
    ],
  },
  {
    title: 'Words and cautions',
    says: 'You can add cautions. None of the site’s own can be taken out.',
    sections: [
      {
        at: 'words',
        title: 'Words',
        fields: [choice('ground', 'A piece of fenced ground is called', { paddock: 'Paddock', pasture: 'Pasture', trap: 'Trap' })],
      },
      {
        at: 'cautions',
        title: 'Cautions of your own',
        says: 'They stand on every page with a calculator, and in every guide.',
        rows: { one: 'Caution', add: 'Add a caution', by: 'says' },
        fields: [words('says', 'Caution', 'a sentence', { isLong: true }), source],
      },
    ],
  },
];

export const officeSections: readonly OfficeSection[] = officeSteps.flatMap(({ sections }) => sections);
