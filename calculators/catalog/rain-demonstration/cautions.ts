import { faultsAt } from '../../asks/faults.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { faultOf } from './compute.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;

export const refusals = [
  ...faultsAt('riseIn', faultOf, {
    'too-steep': 'This tray would stand steeper than one in two and the soil would slide. Prop the end up by less than half the length of the tray.',
  }),
  ...faultsAt('wantedInPerHr', faultOf, {
    'too-many-holes': 'That would take over 5,000 holes. Ask for a gentler rain, take a smaller tray, or make the holes a little larger.',
  }),
  ...faultsAt('headFrom', faultOf, {
    'hardly-rains':
      'This head hardly rains on a tray of this size, under a tenth of an inch an hour. Check the seconds, the jar, and that the tray is in inches.',
    floods: 'This head pours over 100 in an hour, which no cloud does. Check the seconds and the jar, or make fewer and smaller holes.',
  }),
  {
    at: 'runoffMl',
    when: (values: Asked) => values.jars === 'read' && values.ran && values.runoffMl < 1,
    say: 'You said that some ran off, and the runoff jar is empty. Put in what it holds, or answer No above.',
  },
  ...faultsAt('throughMl', faultOf, {
    'more-than-poured':
      'The two jars together hold more than was put on the tray. Read them again, and check the size of the tray and the depth of rain.',
  }),
] as const;
