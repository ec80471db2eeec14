import { choice, number, yesNo } from '../../kit/inputs.ts';

const pond = { supply: 'pond' } as const;
const stake = { ...pond, lossFrom: 'stake' } as const;

/** What the drought decides and the water that is there. */
export const placeInputs = {
  hotF: number('Hottest day to plan for', 'T', 'f', [-20, 120], 95, { help: 'The plan takes the most that any list says up to this heat.' }),
  intakeFrom: choice('What one drinks', 'lists', { options: { lists: 'From published lists, for that heat', known: 'I measured it' } }),
  wantedDays: number('How long must it last', 't_w', 'd', [1, 365], 120, {
    whole: true,
    ask: 'On which date do you move off this water, or can you count on rain that fills it? Count the days from today.',
  }),
  supply: choice('Where the water comes from', 'pond', {
    options: { pond: 'A pond', flow: 'A well, spring or water line', hauled: 'Hauled, or only what stands in tanks' },
  }),
  surfaceFrom: choice('Water surface of the pond today', 'across', {
    options: { across: 'I pace it across, two ways', known: 'I know the acres of water', shore: 'I can only pace round it' },
    shownWhen: pond,
  }),
  lengthFt: number('Longest way across the water', 'l', 'ft', [5, 5000], 220, {
    shownWhen: { ...pond, surfaceFrom: 'across' },
    field: 'Pace along the bank from end to end, or stretch a marked rope. Count your paces over a known hundred feet first.',
  }),
  widthFt: number('Widest way square to it', 'w', 'ft', [5, 5000], 150, { shownWhen: { ...pond, surfaceFrom: 'across' } }),
  surfaceAc: number('Water surface', 'A_k', 'ac', [0.01, 200], 0.6, {
    shownWhen: { ...pond, surfaceFrom: 'known' },
    help: 'As it is now, not as the map has it when full.',
  }),
  shoreFt: number('Way round the water’s edge', 'c', 'ft', [20, 15_000], 590, {
    shownWhen: { ...pond, surfaceFrom: 'shore' },
    help: 'This gives the most that the pond can be. A long pond or one with bays holds less.',
  }),
  maxDepthFt: number('Deepest water today', 'D', 'ft', [0.5, 40], 7, {
    usual: 'pondFt',
    shownWhen: pond,
    field: 'A weight on a marked line, let down from a boat or thrown from the dam at three places. Take the deepest. Never go out alone or on ice.',
  }),
  lossFrom: choice('What sun and ground take', 'known', {
    options: { known: 'I give inches a day', stake: 'I have a stake in the water' },
    shownWhen: pond,
  }),
  evaporationInPerDay: number('Drying up by sun and wind', 'e', 'in/d', [0, 1], 0.3, {
    usual: 'evaporationInPerDay',
    shownWhen: { ...pond, lossFrom: 'known' },
    help: 'A quarter to four tenths of an inch a day in a hot, dry summer; less in spring and fall. From memory: a stake is better.',
    ask: 'Drive a stake and mark the water. How far is it down in a week without rain? Then choose “I have a stake in the water”.',
  }),
  seepageInPerDay: number('Soaking away', 'z', 'in/d', [0, 2], 0.05, {
    usual: 'seepageInPerDay',
    shownWhen: { ...pond, lossFrom: 'known' },
    help: 'Little from a tight clay pond. A leaking one loses more than the sun takes.',
  }),
  dropIn: number('Fall on the stake', 's', 'in', [0.1, 60], 3, {
    shownWhen: stake,
    field: 'A stake with marks, at a spot where stock can’t knock it. Read it at the same hour, with no rain and no inflow between.',
  }),
  stakeDays: number('Days between the two readings', 't_s', 'd', [1, 60], 7, { shownWhen: stake, help: 'A week or more.' }),
  stakeDrunkGal: number('Drunk or pumped in those days', 'G_s', 'gal', [0, 2_000_000], 7000, {
    shownWhen: stake,
    help: '0 if stock were kept off. If in doubt put less: then the loss comes out larger, which errs the right way.',
    ask: 'How many head drank there for how many days? Count 15 gallons a day for a cow, 2 for a ewe.',
  }),
  flowFrom: choice('What it gives', 'bucket', {
    options: { known: 'I know the gallons a minute', bucket: 'I timed a bucket' },
    shownWhen: { supply: 'flow' },
  }),
  knownGpm: number('Steady flow', 'q_k', 'gpm', [0.05, 500], 5, {
    usual: 'springGpm',
    shownWhen: { supply: 'flow', flowFrom: 'known' },
    help: 'After an hour of pumping, not in the first minutes.',
    ask: 'Time a bucket after an hour of pumping, and choose “I timed a bucket”.',
  }),
  bucketGal: number('The bucket holds', 'V_b', 'gal', [0.1, 500], 5, { usual: 'bucketGal', shownWhen: { supply: 'flow', flowFrom: 'bucket' } }),
  bucketFillS: number('Time to fill it', 't_b', 's', [1, 7200], 60, {
    usual: 'bucketS',
    shownWhen: { supply: 'flow', flowFrom: 'bucket' },
    tool: { kind: 'stopwatch' },
  }),
  hasScum: yesNo('Is there green scum, or water like paint or pea soup?', false, { help: 'Look at the downwind bank.' }),
  slip: choice('Has a laboratory tested the water?', 'none', { options: { none: 'No, or not this year', tested: 'Yes, I have the slip' } }),
  sulfateMgPerL: number('Sulfate on the slip', 'SO_4', 'mg/l', [0, 20_000], 300, {
    shownWhen: { slip: 'tested' },
    help: 'As sulfate (SO4). Parts per million is the same. A figure “as sulfur” times 3.',
  }),
  saltMgPerL: number('Salts on the slip (total dissolved solids)', 'TDS', 'mg/l', [0, 50_000], 900, { shownWhen: { slip: 'tested' } }),
};
