import type { Step } from '../../kit/steps.ts';
import type { Asked, compute } from './compute.ts';
import { isExchanged } from './textures.ts';

type Results = ReturnType<typeof compute>;
type Values = Asked & Results;

export const steps: readonly Step<Values, Results>[] = [
  {
    kind: 'lookup',
    shows: 'suctionCm',
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'The pull of the dry soil ahead of the water, from the table for this texture.',
    source: 'rawls-1983, table 1',
  },
  {
    kind: 'formula',
    shows: 'suctionCm',
    onlyWhen: ({ texture }) => texture === 'own',
    says: 'The pull of the dry soil ahead of the water, as given. An inch is 2.54 cm.',
    ways: [{ formula: String.raw`2.54 \times \q{suctionIn}` }],
  },
  {
    kind: 'lookup',
    shows: 'bookCmPerHr',
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'The rate at which this texture lets water through when soaked, from the same table: half of the laboratory’s rate, because air stays trapped.',
    source: 'rawls-1983, table 1',
  },
  {
    kind: 'formula',
    shows: 'bookCmPerHr',
    onlyWhen: ({ texture }) => texture === 'own',
    says: 'The rate when soaked, as given.',
    ways: [{ formula: String.raw`2.54 \times \q{conductivityInPerHr}` }],
  },
  {
    kind: 'formula',
    shows: 'ringRatio',
    says: 'How this ground compares with ground at the book value.',
    ways: [
      {
        when: ({ rings }) => rings === 'both',
        formula: String.raw`\frac{\q{ringHereInPerHr}}{\q{ringThereInPerHr}}`,
        because: 'by your own two ring tests; a single ring reads high on both, so the share holds better than either',
      },
      { formula: '1', because: 'no ring tests, so no difference is claimed' },
    ],
  },
  {
    kind: 'formula',
    shows: 'conductivityCmPerHr',
    says: 'The rate when soaked that is used here.',
    ways: [{ formula: String.raw`\q{ringRatio} \times \q{bookCmPerHr}` }],
  },
  {
    kind: 'lookup',
    shows: 'poreShare',
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'Pores that water can fill. For clay loam most copies print 0.309, a swap of digits; the middle of the printed range, 0.390, is used.',
    source: 'rawls-1983, table 1',
  },
  {
    kind: 'formula',
    shows: 'poreShare',
    onlyWhen: ({ texture }) => texture === 'own',
    says: 'Room for water, as given.',
    ways: [{ formula: String.raw`\frac{\q{roomPercent}}{100}` }],
  },
  {
    kind: 'lookup',
    shows: 'usedFilledPercent',
    onlyWhen: ({ texture }) => texture !== 'own',
    says: 'How full they were before the rain. By the rod: 20 % where it stops in the top 2 in, 40 % at a few inches, 65 % at a foot, 90 % in mud. These four are rough.',
    source: 'our own',
  },
  {
    kind: 'formula',
    shows: 'roomShare',
    says: 'Room that the water finds.',
    source: 'rawls-1983, eq. 2',
    ways: [{ formula: String.raw`(1 - \frac{\q{usedFilledPercent}}{100}) \times \q{poreShare}` }],
  },
  {
    kind: 'formula',
    shows: 'pullCm',
    says: 'Suction times room: how much the dry soil helps.',
    source: 'rawls-1983, eq. 1',
    ways: [{ formula: String.raw`\q{suctionCm} \times \q{roomShare}` }],
  },
  {
    kind: 'rows',
    of: 'lines',
    says: 'Each stretch of rain: when water begins to stand, then the depth F that makes the two sides of the soaking equation equal. What finds no way in runs off.',
    source: 'mein-larson-1971, with chow-1988, section 5.4',
    formulas: {
      rateCmPerHr: String.raw`\frac{60 \times \q{rainCm}}{\q{lastsMin}}`,
      dryMin: [
        { when: ({ standsMin }) => standsMin === 0, formula: String.raw`\q{lastsMin}`, because: 'the ground keeps up all the while' },
        { when: ({ dryMin }) => dryMin === 0, formula: '0', because: 'the ground can’t keep up from the start of this stretch' },
        {
          formula: String.raw`\frac{60}{\q{rateCmPerHr}} \times (\frac{\q{conductivityCmPerHr} \times \q{pullCm}}{\q{rateCmPerHr} - \q{conductivityCmPerHr}} - \q{startCm})`,
        },
      ],
      standsMin: String.raw`\q{lastsMin} - \q{dryMin}`,
      whenPondedCm: String.raw`\q{startCm} + \frac{\q{rateCmPerHr} \times \q{dryMin}}{60}`,
      goalCm: String.raw`\q{whenPondedCm} + \frac{\q{conductivityCmPerHr} \times \q{standsMin}}{60}`,
      balanceCm: String.raw`\q{afterCm} - \q{pullCm} \times \ln(\frac{\q{afterCm} + \q{pullCm}}{\q{whenPondedCm} + \q{pullCm}})`,
      infiltratedCm: String.raw`\q{afterCm} - \q{startCm}`,
      runoffCm: String.raw`\q{rainCm} - \q{infiltratedCm}`,
    },
    sums: {
      totalMin: 'lastsMin',
      totalRainCm: 'rainCm',
      totalSoakedCm: 'infiltratedCm',
      totalRunoffCm: 'runoffCm',
      totalStandsMin: 'standsMin',
    },
  },
  {
    kind: 'formula',
    shows: 'pondsAfterMin',
    onlyWhen: ({ ponds }) => ponds === 'stands',
    says: 'Minutes from the first drop until water stands: the stretches before, and the time in the stretch where it happens.',
    ways: [{ formula: String.raw`\q{beforeMin} + \q{firstDryMin}` }],
  },
  {
    kind: 'formula',
    shows: 'pondsAfterHr',
    onlyWhen: ({ ponds, storm }) => ponds === 'stands' && storm === 'day',
    says: 'In hours of the day’s storm.',
    ways: [{ formula: String.raw`\frac{\q{pondsAfterMin}}{60}` }],
  },
  {
    kind: 'formula',
    shows: 'runoffIn',
    says: 'What runs off, in inches.',
    ways: [{ formula: String.raw`\frac{\q{totalRunoffCm}}{2.54}` }],
  },
  {
    kind: 'formula',
    shows: 'soakedIn',
    says: 'What soaks in.',
    ways: [{ formula: String.raw`\frac{\q{totalSoakedCm}}{2.54}` }],
  },
  {
    kind: 'formula',
    shows: 'runoffPercent',
    says: 'As a share of the rain.',
    ways: [{ formula: String.raw`\frac{\q{totalRunoffCm}}{\q{totalRainCm}} \times 100` }],
  },
  {
    kind: 'formula',
    shows: 'runoffGal',
    says: 'From one acre, in gallons: an inch on an acre is 3,630 cubic feet, a cubic foot 1,728 cubic inches, a gallon 231 of them.',
    source: 'common practice',
    ways: [{ formula: String.raw`\q{runoffIn} \times \frac{3630 \times 1728}{231}` }],
  },
  {
    kind: 'formula',
    shows: 'endRateCmPerHr',
    says: 'How fast the ground could still take water when the rain stopped.',
    source: 'rawls-1983, eq. 2',
    ways: [{ formula: String.raw`\q{conductivityCmPerHr} \times (1 + \frac{\q{pullCm}}{\q{totalSoakedCm}})` }],
  },
  {
    kind: 'lookup',
    shows: 'lowRunoffIn',
    says: 'The same sums with twice the rate when soaked. Book and ground differ by that much easily.',
    source: 'our own',
  },
  { kind: 'lookup', shows: 'highRunoffIn', says: 'And with half of it.', source: 'our own' },
  {
    kind: 'lookup',
    shows: 'otherBookCmPerHr',
    onlyWhen: ({ texture }) => isExchanged(texture),
    says: 'Half of what an earlier list by the same authors prints for loam and silt loam fits the other of the two. If they changed places, this is the rate.',
    source: 'rawls-1982, saturated conductivity, against rawls-1983, table 1',
  },
  {
    kind: 'lookup',
    shows: 'otherRunoffIn',
    onlyWhen: ({ texture }) => isExchanged(texture),
    says: 'The same storm once more with that rate.',
    source: 'our own',
  },
  {
    kind: 'lookup',
    shows: 'evenRunoffIn',
    onlyWhen: ({ totalMin }) => totalMin <= 1440,
    says: 'The same rain and ground with the rain spread evenly over 24 hours.',
    source: 'mein-larson-1971',
  },
];
