import { defineCalculator } from '../../calculators/kit/define.ts';
import { choice, date, months, number, rows, yesNo } from '../../calculators/kit/inputs.ts';
import { amount, day, word } from '../../calculators/kit/quantities.ts';
import { record } from '../../calculators/kit/record/record.ts';
import { byCase, formula, lookup, tex } from '../../calculators/kit/steps.ts';

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
    rainIn: number('Rain', 'P', 'in', [0.01, 40], 3),
    fieldAc: number('Field', 'A', 'ac', [0.5, 10_000], 40, { aliases: ['plot'] }),
    meanF: number('Mean temperature', 'T', 'f', [-40, 120], 59),
    soil: choice('Soil', 'loam', {
      options: {
        loam: { label: 'Loam', fills: { lossPercent: 20 } },
        clay: { label: 'Clay', fills: { lossPercent: 35 }, aliases: ['heavy'] },
        own: 'My own figure',
      },
    }),
    lossPercent: number('Loss', 'q', 'pct', [0, 90], 20, { shownWhen: { soil: 'own' } }),
    isShaded: yesNo('Shaded', true, { belongsTo: 'management', since: { version: 2, before: 'no' } }),
    startDay: date('First day', '2026-05-01', { occurs: { nextFrom: 'today' }, belongsTo: 'management' }),
    counting: choice('Way of counting', 'multiply', {
      options: { multiply: 'Times what is kept', divide: 'Less, over one and the loss' },
      belongsTo: 'management',
      convention: true,
    }),
    herd: rows({
      label: 'The herd',
      rowName: 'kind of stock',
      maxRows: 12,
      tool: { kind: 'marks', label: 'All go through the gate', atS: [60], says: ['count them'] },
      columns: {
        stock: choice('Kind', 'cow', {
          options: { cow: { label: 'Cows', fills: { weightLb: 1200 } }, bull: { label: 'Bulls', fills: { weightLb: 1800 } }, own: 'Other' },
          belongsTo: 'management',
        }),
        countHead: number('Number', 'N', 'head', [1, 5000], 45, { belongsTo: 'management', whole: true }),
        weightLb: number('Weight', 'W', 'lb', [20, 3000], 1200, { belongsTo: 'management' }),
        isNursing: yesNo('Nursing', false, { belongsTo: 'management', shownWhen: { stock: 'cow' } }),
        readyDay: date('Ready', '2026-06-01', { occurs: { nextFrom: 'startDay' } }),
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
      columns: { feedLb: number('Feed', 'F', 'lb', [0, 100_000], 100, { belongsTo: 'management' }) },
      default: [{ feedLb: 100 }],
    }),
    monthlyIn: months('Rain by month', 'M', 'in', [0, 40], [1, 1, 2, 3, 4, 4, 3, 3, 2, 2, 1, 1]),
    soakMin: number('Time to soak in', 't', 'min', [0.01, 600], 4, { tool: { kind: 'stopwatch' } }),
    held: choice('The crumb held', 'long', {
      options: { short: 'Less than 5 seconds', long: 'Longer' },
      tool: { kind: 'marks', label: 'The crumb goes in', atS: [5, 30, 300], says: ['look', 'look again', 'lift it out'] },
    }),
    bareCount: number('Bare steps', 'n_b', tallied.unit, [tallied.min, tallied.max], 12, {
      ...tallied,
      tool: { kind: 'tally', group: 'steps', until: 20, label: 'Bare' },
    }),
    plantCount: number('Steps on a plant', 'n_p', tallied.unit, [tallied.min, tallied.max], 8, {
      ...tallied,
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
    usedPercent: amount('Loss that was used', 'q_u', 'pct'),
    lines: {
      kind: 'rows',
      label: 'Each kind',
      shown: ['headCount', 'lineLb'],
      columns: {
        lineLb: amount('Together', 'L', 'lb', 0),
        nursing: word('Nursing', { yes: 'nursing', no: 'dry' }),
        headCount: amount('Number', 'N', 'count', 0),
        eachLb: amount('Weight', 'W', 'lb', 0),
        ready: day('Ready'),
        startsDay: day('Start'),
      },
    },
    herdLb: amount('The herd', 'H', 'lb', -1),
    feedLb: amount('Feed', 'F', 'lb', 0),
    rootIn: amount('Root', 'R', 'in', 3),
    verdict: word('Weather', { frozen: 'frozen hard', hot: 'too hot', mild: 'mild' }),
    yearIn: amount('The year', 'Y', 'in'),
    gaugeIn: amount('By the gauge', 'G', 'in', 2),
    loadLbPerAc: amount('Load', 'B', 'lb/ac', 0),
    begins: day('Begins'),
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
    lookup('usedPercent', { says: 'The loss on {soil}.', source: 'our own' }),
    byCase('keptIn', {
      says: 'What stays of {rainIn}.',
      ways: [
        {
          when: ({ counting }) => counting === 'multiply',
          formula: tex`\q{rainIn} (1 - \frac{\q{usedPercent}}{100})`,
          because: 'the loss is taken off',
        },
        { formula: tex`\frac{\q{rainIn}}{1 + \q{usedPercent} / 100}` },
      ],
    }),
    formula('rootIn', tex`\sqrt{\q{keptIn}^2 + \q{rainIn}^{1 + 1}}`, { says: 'A root.' }),
    { kind: 'check', left: tex`\q{rootIn}^2`, right: tex`\q{keptIn}^2 + \q{rainIn}^2`, says: 'Put back in.', because: 'a square undoes a root' },
    {
      kind: 'rows',
      of: 'lines',
      says: 'Each kind of stock.',
      formulas: {
        lineLb: [
          { when: ({ nursing }) => nursing === 'yes', formula: tex`\q{headCount} \q{eachLb} \times 1.1` },
          { formula: tex`\q{headCount} \times \q{eachLb}` },
        ],
      },
      sums: { herdLb: 'lineLb' },
    },
    formula('loadLbPerAc', tex`\q{herdLb} / \q{fieldAc}`, { onlyWhen: ({ meanF }) => meanF >= 32, says: 'On each acre.' }),
  ],
  cautions: [{ when: ({ verdict }) => verdict === 'hot', say: 'Shade and water.', source: 'common practice' }],
  limits: ['It is not about anything.'],
  note: (_, show) => `${show('keptIn')} kept of ${show('rainIn')} from ${show('startDay')}, ${show('verdict')}.`,
  picture: { kind: 'shares', whole: 'rainIn', parts: [{ of: 'keptIn', tone: 'kept' }] },
  calendar: { rows: 'lines', day: 'ready', title: () => 'Ready', text: ({ lineLb }) => `${lineLb.toFixed(0)} lb` },
  sources: ['our own'],
  topic: 'rain',
  order: 10,
  guides: ['none-yet'],
  changes: [{ version: 2, say: 'shade is asked for.' }],
});
