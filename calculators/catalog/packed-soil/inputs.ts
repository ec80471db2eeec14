import { allRibbons } from '../../asks/textures.ts';
import { choice, number, rows } from '../../kit/inputs.ts';

export const inputs = {
  texture: choice('Wet some of the soil and squeeze out a ribbon', 'silt-loam', {
    options: allRibbons,
    help: 'What counts as packed depends on texture. Take the soil from the depth of the cores.',
    offeredBy: 'pasture.texture',
  }),
  volumeFrom: choice('Volume of a core', 'can', {
    options: {
      can: { label: 'A can or ring with both ends cut out: I measured it', short: 'a can' },
      known: { label: 'I know the volume of the ring', short: 'a ring' },
      hole: { label: 'Holes dug and filled with water: each has its own', short: 'dug holes' },
    },
  }),
  acrossIn: number('Width of the can, inside', 'w', 'in', [0.5, 12], 3, {
    help: 'Measure to a sixteenth of an inch (1.5 mm): this error counts twice.',
    shownWhen: { volumeFrom: 'can' },
    offeredBy: 'tools.canAcross',
  }),
  tallIn: number('Height of the soil in it', 'h', 'in', [0.5, 12], 3, {
    field: 'Press it in level with a board across the top, so that the core is not squeezed. Dig it out and trim both ends flat.',
    shownWhen: { volumeFrom: 'can' },
    offeredBy: 'tools.canTall',
  }),
  ringMl: number('Volume of the ring', 'V_{ring}', 'ml', [20, 5000], 350, {
    help: 'A cubic centimeter is a milliliter.',
    field: 'Tape one end shut, fill it level with water and pour that into a kitchen measure.',
    shownWhen: { volumeFrom: 'known' },
  }),
  weighed: choice('The soil was weighed', 'dry', {
    options: {
      dry: { label: 'Dry', short: 'weighed dry' },
      moist: { label: 'Moist, and I dried a small part to learn its water', short: 'weighed moist' },
    },
    help: 'Dry means that another hour in the oven no longer changes the weight.',
  }),
  stones: choice('Stones in the cores, larger than a match head', 'none', {
    options: {
      none: { label: 'Hardly any', short: 'hardly any stones' },
      weighed: { label: 'Washed out and weighed', short: 'stones weighed' },
      jar: { label: 'Weighed, and their volume from a jar of water', short: 'stones in a jar' },
    },
    help: 'Stones make a core heavy without making the soil tight.',
  }),
  cores: rows({
    label: 'Cores',
    rowName: 'core',
    each: '{coreG}, a hole of {holeMl}, {waterPercent} of water, {stoneG} of stones, which push up {jarMl}',
    help: 'At least three from one kind of ground, at one depth.',
    maxRows: 12,
    columns: {
      coreG: number('Weight of the soil, without the can', 'm', 'g', [10, 15_000], 490, {
        step: 5,
        belongsTo: 'management',
        field: 'Dry it in an oven at 220 °F (105 °C) overnight, or in thin layers at room warmth for days. It is dry when the weight stops falling.',
      }),
      waterPercent: number('Water, percent of the dry weight', 'u', 'pct', [0, 100], 15, {
        belongsTo: 'management',
        field: 'Weigh a handful moist, dry it, weigh it again. Divide what it lost by the dry weight, times 100.',
        shownWhen: { weighed: 'moist' },
      }),
      holeMl: number('Water that fills the hole', 'V_{hole}', 'ml', [20, 15_000], 350, {
        belongsTo: 'management',
        field: 'Line the hole with thin plastic film and pour water in from a measure until it stands level with the ground.',
        shownWhen: { volumeFrom: 'hole' },
      }),
      stoneG: number('Weight of the stones, dry', 's', 'g', [0, 10_000], 0, { belongsTo: 'management', shownWhen: { stones: ['weighed', 'jar'] } }),
      jarMl: number('Water that the stones push up', 'V_{jar}', 'ml', [0, 10_000], 0, {
        belongsTo: 'management',
        field: 'Half fill a measuring jar, read it, put the stones in, read it again.',
        shownWhen: { stones: 'jar' },
      }),
    },
    default: [
      { coreG: 490, waterPercent: 15, holeMl: 350, stoneG: 0, jarMl: 0 },
      { coreG: 515, waterPercent: 15, holeMl: 350, stoneG: 0, jarMl: 0 },
      { coreG: 505, waterPercent: 15, holeMl: 350, stoneG: 0, jarMl: 0 },
    ],
  }),
  probe: choice('Did you push a probe with a gauge?', 'none', {
    options: { none: 'No', pushed: 'Yes' },
    belongsTo: 'management',
    help: 'It adds how deep the hard layer lies. It means something only in moist soil.',
  }),
  moisture: choice('How moist was the soil to that depth?', 'sponge', {
    options: {
      sponge: { label: 'Moist as a wrung sponge', short: 'moist as a sponge' },
      dry: { label: 'Drier than that', short: 'drier than a sponge' },
      wet: { label: 'Wetter: water came out', short: 'wetter than a sponge' },
    },
    belongsTo: 'management',
    help: 'A day or two after a soaking rain is right.',
    field: 'Squeeze a handful from the depth of the push. Like a wrung sponge, it wets the hand and nothing drips.',
    shownWhen: { probe: 'pushed' },
  }),
  pushes: rows({
    label: 'Pushes',
    rowName: 'push',
    each: '{gauge}, at {stopIn}',
    help: 'An inch a second, ten places or more. Leave out the ones that hit a stone.',
    maxRows: 30,
    shownWhen: { probe: 'pushed', moisture: 'sponge' },
    columns: {
      gauge: choice('The gauge passed 300 psi', 'passed', {
        options: { passed: { label: 'Yes', short: 'over 300 psi' }, never: { label: 'Not within reach', short: 'never over 300 psi' } },
        belongsTo: 'management',
      }),
      stopIn: number('First at this depth', 'z', 'in', [0, 36], 6, { belongsTo: 'management', shownWhen: { gauge: 'passed' } }),
    },
    default: [
      { gauge: 'passed', stopIn: 5 },
      { gauge: 'passed', stopIn: 7 },
      { gauge: 'never', stopIn: 6 },
      { gauge: 'passed', stopIn: 6 },
    ],
  }),
};
