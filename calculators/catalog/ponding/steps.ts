import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { Asked, compute } from './compute.ts';
import { isExchanged } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type Values = Asked & Results;

export const steps: Working<Values, Results> = [
  lookup('suctionCm', {
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'The pull of the dry soil ahead of the water, from the table for this texture.',
    source: 'rawls-1983, table 1',
  }),
  formula('suctionCm', tex`2.54 \times \q{suctionIn}`, {
    onlyWhen: ({ texture }) => texture === 'own',
    says: 'The pull of the dry soil ahead of the water, as given. An inch is 2.54 cm.',
  }),
  lookup('bookCmPerHr', {
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'The rate at which this texture lets water through when soaked, from the same table: half of the laboratory’s rate, because air stays trapped.',
    source: 'rawls-1983, table 1',
  }),
  formula('bookCmPerHr', tex`2.54 \times \q{conductivityInPerHr}`, {
    onlyWhen: ({ texture }) => texture === 'own',
    says: 'The rate when soaked, as given.',
  }),
  byCase('ringRatio', {
    says: 'How this ground compares with ground at the book value.',
    ways: [
      {
        when: ({ rings }) => rings === 'both',
        formula: tex`\frac{\q{ringHereInPerHr}}{\q{ringThereInPerHr}}`,
        because: 'by your own two ring tests; a single ring reads high on both, so the share holds better than either',
      },
      { formula: '1', because: 'no ring tests, so no difference is claimed' },
    ],
  }),
  formula('conductivityCmPerHr', tex`\q{ringRatio} \times \q{bookCmPerHr}`, { says: 'The rate when soaked that is used here.' }),
  lookup('poreShare', {
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'Pores that water can fill. For clay loam most copies print 0.309, a swap of digits; the middle of the printed range, 0.390, is used.',
    source: 'rawls-1983, table 1',
  }),
  formula('poreShare', tex`\frac{\q{roomPercent}}{100}`, { onlyWhen: ({ texture }) => texture === 'own', says: 'Room for water, as given.' }),
  lookup('usedFilledPercent', {
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'How full they were before the rain. By the rod: 20 % where it stops in the top 2 in, 40 % at a few inches, 65 % at a foot, 90 % in mud. These four are rough.',
    source: 'our own',
  }),
  formula('roomShare', tex`(1 - \frac{\q{usedFilledPercent}}{100}) \times \q{poreShare}`, {
    says: 'Room that the water finds.',
    source: 'rawls-1983, eq. 2',
  }),
  formula('pullCm', tex`\q{suctionCm} \times \q{roomShare}`, {
    says: 'Suction times room: how much the dry soil helps.',
    source: 'rawls-1983, eq. 1',
  }),
  tabulate('lines', {
    says: 'Each stretch of rain: when water begins to stand, then the depth F that makes the two sides of the soaking equation equal. What finds no way in runs off.',
    source: 'mein-larson-1971, with chow-1988, section 5.4',
    formulas: {
      rateCmPerHr: tex`\frac{60 \times \q{rainCm}}{\q{lastsMin}}`,
      dryMin: [
        { when: ({ standsMin }) => standsMin === 0, formula: tex`\q{lastsMin}`, because: 'the ground keeps up all the while' },
        { when: ({ dryMin }) => dryMin === 0, formula: '0', because: 'the ground can’t keep up from the start of this stretch' },
        {
          formula: tex`\frac{60}{\q{rateCmPerHr}} \times (\frac{\q{conductivityCmPerHr} \times \q{pullCm}}{\q{rateCmPerHr} - \q{conductivityCmPerHr}} - \q{startCm})`,
        },
      ],
      standsMin: tex`\q{lastsMin} - \q{dryMin}`,
      whenPondedCm: tex`\q{startCm} + \frac{\q{rateCmPerHr} \times \q{dryMin}}{60}`,
      goalCm: tex`\q{whenPondedCm} + \frac{\q{conductivityCmPerHr} \times \q{standsMin}}{60}`,
      balanceCm: tex`\q{afterCm} - \q{pullCm} \times \ln(\frac{\q{afterCm} + \q{pullCm}}{\q{whenPondedCm} + \q{pullCm}})`,
      infiltratedCm: tex`\q{afterCm} - \q{startCm}`,
      runoffCm: tex`\q{rainCm} - \q{infiltratedCm}`,
    },
    sums: { totalMin: 'lastsMin', totalRainCm: 'rainCm', totalSoakedCm: 'infiltratedCm', totalRunoffCm: 'runoffCm', totalStandsMin: 'standsMin' },
  }),
  formula('pondsAfterMin', tex`\q{beforeMin} + \q{firstDryMin}`, {
    onlyWhen: ({ ponds }) => ponds === 'stands',
    says: 'Minutes from the first drop until water stands: the stretches before, and the time in the stretch where it happens.',
  }),
  formula('pondsAfterHr', tex`\frac{\q{pondsAfterMin}}{60}`, {
    onlyWhen: ({ ponds, storm }) => ponds === 'stands' && storm === 'day',
    says: 'In hours of the day’s storm.',
  }),
  formula('runoffIn', tex`\frac{\q{totalRunoffCm}}{2.54}`, { says: 'What runs off, in inches.' }),
  formula('soakedIn', tex`\frac{\q{totalSoakedCm}}{2.54}`, { says: 'What soaks in.' }),
  formula('runoffPercent', tex`\frac{\q{totalRunoffCm}}{\q{totalRainCm}} \times 100`, { says: 'As a share of the rain.' }),
  formula('runoffGal', tex`\q{runoffIn} \times \frac{3630 \times 1728}{231}`, {
    says: 'From one acre, in gallons: an inch on an acre is 3,630 cubic feet, a cubic foot 1,728 cubic inches, a gallon 231 of them.',
    source: 'common practice',
  }),
  formula('endRateCmPerHr', tex`\q{conductivityCmPerHr} \times (1 + \frac{\q{pullCm}}{\q{totalSoakedCm}})`, {
    says: 'How fast the ground could still take water when the rain stopped.',
    source: 'rawls-1983, eq. 2',
  }),
  lookup('lowRunoffIn', { says: 'The same sums with twice the rate when soaked. Book and ground differ by that much easily.', source: 'our own' }),
  lookup('highRunoffIn', { says: 'And with half of it.', source: 'our own' }),
  when(
    ({ texture }) => isExchanged(texture),
    [
      lookup('otherBookCmPerHr', {
        says: 'Half of what an earlier list by the same authors prints for loam and silt loam fits the other of the two. If they changed places, this is the rate.',
        source: 'rawls-1982, saturated conductivity, against rawls-1983, table 1',
      }),
      lookup('otherRunoffIn', { says: 'The same storm once more with that rate.', source: 'our own' }),
    ],
  ),
  lookup('evenRunoffIn', {
    onlyWhen: ({ totalMin }) => totalMin <= 1440,
    says: 'The same rain and ground with the rain spread evenly over 24 hours.',
    source: 'mein-larson-1971',
  }),
];
