import { defineCalculator } from '../../calculators/kit/define.ts';
import { choice, date, months, number, rows, yesNo } from '../../calculators/kit/inputs.ts';
import { record } from '../../calculators/kit/record/record.ts';

const amount = <const U extends 'in' | 'ac' | 'gal' | 'lb' | 'lb/ac' | 'count' | 'd' | 'min'>(label: string, symbol: string, unit: U, digits = 1) =>
  ({ kind: 'number', label, symbol, unit, digits }) as const;

const tallied = { belongsTo: 'management', unit: 'count', min: 0, max: 500, whole: true } as const;

/**
 * No calculator of the trade: one of everything that a definition can hold, so that every rule of the kit has something to work on.
 * Version 2: `isShaded` came later, `fieldAc` was called `plot`, option `clay` was called `heavy`, and the results changed once.
 */
export default defineCalculator({
  slug: 'kitchen-sink',
  version: 2,
  title: 'One of everything',
  inputs: {
    rainIn: number({ label: 'Rain', symbol: 'P', belongsTo: 'place', unit: 'in', min: 0.01, max: 40, default: 3 }),
    fieldAc: number({ label: 'Field', symbol: 'A', belongsTo: 'place', unit: 'ac', min: 0.5, max: 10_000, default: 40, aliases: ['plot'] }),
    meanF: number({ label: 'Mean temperature', symbol: 'T', belongsTo: 'place', unit: 'f', min: -40, max: 120, default: 59 }),
    soil: choice({
      label: 'Soil',
      belongsTo: 'place',
      default: 'loam',
      options: {
        loam: { label: 'Loam', fills: { lossPercent: 20 } },
        clay: { label: 'Clay', fills: { lossPercent: 35 }, aliases: ['heavy'] },
        own: { label: 'My own figure' },
      },
    }),
    lossPercent: number({ label: 'Loss', symbol: 'q', belongsTo: 'place', unit: 'pct', min: 0, max: 90, default: 20, shownWhen: { soil: 'own' } }),
    isShaded: yesNo({ label: 'Shaded', belongsTo: 'management', default: true, since: { version: 2, before: 'no' } }),
    startDay: date({ label: 'First day', belongsTo: 'management', default: '2026-05-01' }),
    counting: choice({
      label: 'Way of counting',
      belongsTo: 'management',
      default: 'multiply',
      convention: true,
      options: { multiply: { label: 'Times what is kept' }, divide: { label: 'Less, over one and the loss' } },
    }),
    herd: rows({
      label: 'The herd',
      rowName: 'kind of stock',
      maxRows: 12,
      tool: { kind: 'marks', label: 'All go through the gate', atS: [60], says: ['count them'] },
      columns: {
        stock: choice({
          label: 'Kind',
          belongsTo: 'management',
          default: 'cow',
          options: {
            cow: { label: 'Cows', fills: { weightLb: 1200 } },
            bull: { label: 'Bulls', fills: { weightLb: 1800 } },
            own: { label: 'Other' },
          },
        }),
        countHead: number({ label: 'Number', symbol: 'N', belongsTo: 'management', unit: 'head', min: 1, max: 5000, default: 45, whole: true }),
        weightLb: number({ label: 'Weight', symbol: 'W', belongsTo: 'management', unit: 'lb', min: 20, max: 3000, default: 1200 }),
        isNursing: yesNo({ label: 'Nursing', belongsTo: 'management', default: false, shownWhen: { stock: 'cow' } }),
        readyDay: date({ label: 'Ready', belongsTo: 'place', default: '2026-06-01' }),
      },
      default: [
        { stock: 'cow', countHead: 45, weightLb: 1250, isNursing: true, readyDay: '2026-06-01' },
        { stock: 'bull', countHead: 2, weightLb: 1900, isNursing: false, readyDay: '2026-06-10' },
      ],
      refusals: [
        { at: 'weightLb', when: ({ stock, weightLb }) => stock === 'bull' && weightLb < 100, say: 'No bull is that light. Type 100 lb or more.' },
      ],
    }),
    shares: rows({
      label: 'Extra feed',
      rowName: 'feed',
      maxRows: 3,
      shownWhen: { isShaded: 'yes' },
      columns: { feedLb: number({ label: 'Feed', symbol: 'F', belongsTo: 'management', unit: 'lb', min: 0, max: 100_000, default: 100 }) },
      default: [{ feedLb: 100 }],
    }),
    monthlyIn: months({
      label: 'Rain by month',
      symbol: 'M',
      belongsTo: 'place',
      unit: 'in',
      min: 0,
      max: 40,
      default: [1, 1, 2, 3, 4, 4, 3, 3, 2, 2, 1, 1],
    }),
    soakMin: number({
      label: 'Time to soak in',
      symbol: 't',
      belongsTo: 'place',
      unit: 'min',
      min: 0.01,
      max: 600,
      default: 4,
      tool: { kind: 'stopwatch' },
    }),
    held: choice({
      label: 'The crumb held',
      belongsTo: 'place',
      default: 'long',
      options: { short: { label: 'Less than 5 seconds' }, long: { label: 'Longer' } },
      tool: { kind: 'marks', label: 'The crumb goes in', atS: [5, 30, 300], says: ['look', 'look again', 'lift it out'] },
    }),
    bareCount: number({
      ...tallied,
      label: 'Bare steps',
      symbol: 'n_b',
      default: 12,
      tool: { kind: 'tally', group: 'steps', until: 20, label: 'Bare' },
    }),
    plantCount: number({
      ...tallied,
      label: 'Steps on a plant',
      symbol: 'n_p',
      default: 8,
      tool: { kind: 'tally', group: 'steps', until: 20, label: 'Plant' },
    }),
    gauge: record({ label: 'Gauge', belongsTo: 'place', unit: 'in', min: 0, max: 40, maxRows: 400, default: '2026-03-01, 0.5\n2026-03-09, 1.25' }),
  },
  refusals: [
    {
      at: 'startDay',
      when: ({ startDay, herd }) => herd.some(({ readyDay }) => readyDay < startDay - 400),
      say: 'Too long before. Type a later day.',
    },
  ],
  compute: ({
    rainIn,
    fieldAc,
    meanF,
    soil,
    lossPercent,
    isShaded,
    counting,
    herd,
    shares,
    monthlyIn,
    gauge,
    startDay,
    soakMin,
    held,
    bareCount,
    plantCount,
  }) => {
    const usedPercent = soil === 'own' ? lossPercent : soil === 'clay' ? 35 : 20;
    const keptIn = counting === 'multiply' ? rainIn * (1 - usedPercent / 100) : rainIn / (1 + usedPercent / 100);
    const lines = herd.map(({ countHead, weightLb, readyDay, isNursing }) => ({
      lineLb: countHead * weightLb * (isNursing ? 1.1 : 1),
      nursing: isNursing ? ('yes' as const) : ('no' as const),
      headCount: countHead,
      eachLb: weightLb,
      ready: readyDay,
      startsDay: startDay,
    }));
    const herdLb = lines.reduce((sum, { lineLb }) => sum + lineLb, 0);
    const feedLb = isShaded ? shares.reduce((sum, share) => sum + share.feedLb, 0) : 0;
    return {
      keptIn,
      usedPercent,
      lines,
      herdLb,
      feedLb,
      rootIn: Math.sqrt(keptIn * keptIn + rainIn ** 2),
      verdict: meanF < 32 ? ('frozen' as const) : meanF > 90 ? ('hot' as const) : ('mild' as const),
      yearIn: monthlyIn.reduce((sum, each) => sum + each, 0),
      gaugeIn: gauge.reduce((sum, { amount }) => sum + amount, 0),
      loadLbPerAc: herdLb / fieldAc,
      begins: startDay,
      soakedMin: held === 'long' ? soakMin : 0,
      stepsCount: bareCount + plantCount,
    };
  },
}).describe({
  question: 'Does every part of the kit hold?',
  lead: 'One of everything.',
  quantities: {
    keptIn: amount('Kept', 'K', 'in', 2),
    usedPercent: { kind: 'number', label: 'Loss that was used', symbol: 'q_u', unit: 'pct', digits: 0 },
    lines: {
      kind: 'rows',
      label: 'Each kind',
      shown: ['headCount', 'lineLb'],
      columns: {
        lineLb: amount('Together', 'L', 'lb', 0),
        nursing: { kind: 'word', label: 'Nursing', words: { yes: 'nursing', no: 'dry' } },
        headCount: amount('Number', 'N', 'count', 0),
        eachLb: amount('Weight', 'W', 'lb', 0),
        ready: { kind: 'day', label: 'Ready' },
        startsDay: { kind: 'day', label: 'Start' },
      },
    },
    herdLb: amount('The herd', 'H', 'lb', -1),
    feedLb: amount('Feed', 'F', 'lb', 0),
    rootIn: amount('Root', 'R', 'in', 3),
    verdict: { kind: 'word', label: 'Weather', words: { frozen: 'frozen hard', hot: 'too hot', mild: 'mild' } },
    yearIn: amount('The year', 'Y', 'in'),
    gaugeIn: amount('By the gauge', 'G', 'in', 2),
    loadLbPerAc: amount('Load', 'B', 'lb/ac', 0),
    begins: { kind: 'day', label: 'Begins' },
    soakedMin: amount('Soaked for', 't_h', 'min', 1),
    stepsCount: amount('Steps', 'n', 'count', 0),
  },
  results: [
    { of: 'keptIn', range: { low: 'keptIn', high: 'rootIn', says: '{low} to {high} in {verdict} weather' } },
    { of: 'feedLb', when: ({ isShaded }) => isShaded },
    { of: 'verdict' },
    { of: 'begins' },
    { of: 'lines' },
  ],
  steps: [
    { kind: 'lookup', shows: 'usedPercent', says: 'The loss on {soil}.', source: 'our own' },
    {
      kind: 'formula',
      shows: 'keptIn',
      says: 'What stays of {rainIn}.',
      ways: [
        {
          when: ({ counting }) => counting === 'multiply',
          formula: String.raw`\q{rainIn} (1 - \frac{\q{usedPercent}}{100})`,
          because: 'the loss is taken off',
        },
        { formula: String.raw`\frac{\q{rainIn}}{1 + \q{usedPercent} / 100}` },
      ],
    },
    { kind: 'formula', shows: 'rootIn', says: 'A root.', ways: [{ formula: String.raw`\sqrt{\q{keptIn}^2 + \q{rainIn}^{1 + 1}}` }] },
    {
      kind: 'check',
      left: String.raw`\q{rootIn}^2`,
      right: String.raw`\q{keptIn}^2 + \q{rainIn}^2`,
      says: 'Put back in.',
      because: 'a square undoes a root',
    },
    {
      kind: 'rows',
      of: 'lines',
      says: 'Each kind of stock.',
      formulas: {
        lineLb: [
          { when: ({ nursing }) => nursing === 'yes', formula: String.raw`\q{headCount} \q{eachLb} \times 1.1` },
          { formula: String.raw`\q{headCount} \times \q{eachLb}` },
        ],
      },
      sums: { herdLb: 'lineLb' },
    },
    {
      kind: 'formula',
      shows: 'loadLbPerAc',
      onlyWhen: ({ meanF }) => meanF >= 32,
      says: 'On each acre.',
      ways: [{ formula: String.raw`\q{herdLb} / \q{fieldAc}` }],
    },
  ],
  cautions: [{ when: ({ verdict }) => verdict === 'hot', say: 'Shade and water.', source: 'common practice' }],
  limits: ['It is not about anything.'],
  note: (_, show) => `${show('keptIn')} kept of ${show('rainIn')} from ${show('startDay')}, ${show('verdict')}.`,
  picture: { kind: 'shares', whole: 'rainIn', parts: [{ of: 'keptIn', tone: 'kept' }] },
  calendar: { rows: 'lines', day: 'ready', title: () => 'Ready', text: ({ lineLb }) => `${lineLb.toFixed(0)} lb` },
  sources: ['our own'],
  guides: ['none-yet'],
  changes: [{ version: 2, say: 'shade is asked for.' }],
});
