import { expect, it } from 'vitest';
import type { CopyState } from '../../src/copy/copyState.ts';
import { buttonFor, canBeHelped, copyLine, momentOf } from '../../src/copy/copyWords.ts';

const of = { guides: 160, calculators: 26, bytes: 2_700_000, roomBytes: 16_000_000 };
const state = (is: CopyState['is'], standing: CopyState['standing'], more: Partial<CopyState> = {}): CopyState => ({
  kind: 'copy-state',
  is,
  standing,
  older: undefined,
  kept: { guides: 142, calculators: 26, bytes: 1_700_000, roomBytes: 5_000_000 },
  of,
  ...more,
});

it.each([
  [state('coming', 'begun'), '142 of 160 guides are on this phone, and more are on their way.'],
  [state('stopped', 'begun'), '142 of 160 guides are on this phone. The copy goes on when the signal is better.'],
  [state('full', 'begun'), '142 of 160 guides are on this phone. There is no room for more.'],
  [state('coming', 'core'), 'Guides, calculators and search work with no signal. The rest is on its way.'],
  [state('waiting', 'core'), 'Guides, calculators and search work with no signal. The rest, 1.0 MB, waits because you save data.'],
  [state('whole', 'whole', { kept: of }), 'Everything here works with no signal.'],
  [state('coming', 'begun', { older: 'whole' }), 'Everything here works with no signal. A newer copy is on its way.'],
  [state('waiting', 'begun', { older: 'whole' }), 'Everything here works with no signal. A newer copy can be had.'],
  [state('coming', 'begun', { older: 'core' }), 'Guides, calculators and search work with no signal. A newer copy is on its way.'],
  [state('stopped', 'begun', { older: 'core' }), 'Guides, calculators and search work with no signal. A newer copy comes when the signal is better.'],
])('says how far it is: %#', (given, line) => {
  expect(copyLine(given, 'phone')).toBe(line);
});

it('promises everything only when all of an edition is here', () => {
  for (const is of ['coming', 'waiting', 'stopped', 'full'] as const)
    for (const standing of ['begun', 'core'] as const)
      for (const older of [undefined, 'core'] as const) expect(copyLine(state(is, standing, { older }), 'phone')).not.toContain('Everything');
});

it('offers a button where a person can do something, and none where it comes by itself', () => {
  for (const is of ['coming', 'waiting', 'stopped', 'full', 'whole'] as const) {
    const given = state(is, 'core');
    expect(buttonFor(given) !== undefined, is).toBe(canBeHelped(given));
  }
  expect(buttonFor(state('waiting', 'core'))).toBe('Fetch the rest now (1.0 MB)');
  expect(buttonFor(state('waiting', 'begun', { older: 'core' }))).toBe('Fetch the newer copy now (1.0 MB)');
});

it('is said aloud when the core, the whole or the full disk is reached, and not for each guide', () => {
  const more = { ...state('coming', 'begun'), kept: { ...of, guides: 143 } };
  expect(momentOf(more)).toBe(momentOf(state('coming', 'begun')));
  expect(new Set([state('coming', 'begun'), state('coming', 'core'), state('whole', 'whole'), state('full', 'core')].map(momentOf)).size).toBe(4);
});
