import { checkList, tableChecks } from '../checks.ts';
import { initialAbstractionIn } from './initialAbstractionIn.ts';
import { retentionIn } from './retentionIn.ts';

export default checkList(
  'initialAbstractionIn',
  tableChecks({
    columns: ['Ia'],
    text: `
      98  0.04
      97  0.06
      96  0.08
      95  0.11
      94  0.13
      93  0.15
      92  0.17
      91  0.20
      90  0.22
      89  0.25
      88  0.27
      87  0.30
      86  0.33
      85  0.35
      84  0.38
      83  0.41
      82  0.44
      81  0.47
      80  0.50
      79  0.53
      78  0.56
      77  0.60
      76  0.63
      75  0.67
      74  0.70
      73  0.74
      72  0.78
      71  0.82
      70  0.86
      69  0.90
      68  0.94
      67  0.985
      66  1.03
      65  1.08
      64  1.125
      63  1.175
      62  1.23
      61  1.28
      60  1.33
      59  1.39
      58  1.45
      57  1.51
      56  1.57
      55  1.64
      54  1.70
      53  1.77
      52  1.85
      51  1.92
      50  2.00
      45  2.44
      40  3.00
    `,
    what: (curveNumber) => `initial abstraction, curve number ${curveNumber}`,
    ours: (curveNumber) => initialAbstractionIn({ retentionIn: retentionIn(Number(curveNumber)), abstractionRatio: 0.2 }),
    source: 'tr55-1986',
    where: 'table 4-1, all but three to hundredths here',
    seen: 'transcription',
  }),
);
