import type { CopyState } from './copyState.ts';

/** What a person calls what they hold. */
export type Device = 'phone' | 'computer';

export const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
const guidesHere = ({ kept, of }: CopyState, device: Device): string => `${kept.guides} of ${of.guides} guides are on this ${device}`;

const works = { core: 'Guides, calculators and search work with no signal.', whole: 'Everything here works with no signal.' } as const;
const newer: Readonly<Record<CopyState['is'], string>> = {
  coming: ' A newer copy is on its way.',
  waiting: ' A newer copy can be had.',
  stopped: ' A newer copy comes when the signal is better.',
  full: ' There is no room for a newer copy.',
  whole: '',
};
const rest: Readonly<Record<CopyState['is'], (state: CopyState) => string>> = {
  coming: () => ' The rest is on its way.',
  waiting: ({ kept, of }) => ` The rest, ${megabytes(of.bytes - kept.bytes)}, waits because you save data.`,
  stopped: () => ' The rest comes when the signal is better.',
  full: () => ' There is no room for the rest.',
  whole: () => '',
};
const begun: Readonly<Record<CopyState['is'], string>> = {
  coming: ', and more are on their way.',
  waiting: ', and the rest waits because you save data.',
  stopped: '. The copy goes on when the signal is better.',
  full: '. There is no room for more.',
  whole: '.',
};

/** The line in the foot of each page. It promises everything only when all of the edition that opens is here. */
export function copyLine(state: CopyState, device: Device): string {
  if (state.is === 'whole') return works.whole;
  if (state.older !== undefined) return works[state.older] + newer[state.is];
  if (state.standing === 'core') return works.core + rest[state.is](state);
  return `${guidesHere(state, device)}${begun[state.is]}`;
}

/** Is there something that a person can do about it? */
export const canBeHelped = ({ is }: CopyState): boolean => is === 'waiting' || is === 'stopped' || is === 'full';

/** What is said aloud once, when it comes to that; a page that opens on it says nothing. */
export const momentOf = ({ is, standing, older }: CopyState): string =>
  is === 'full' ? 'full' : is === 'whole' ? 'whole' : older ? 'older' : standing;

/** What the button of the page about the copy offers; nothing while it comes by itself or all is here. */
export const buttonFor = ({ is, older, kept, of }: CopyState): string | undefined =>
  ({
    coming: undefined,
    waiting: `Fetch ${older ? 'the newer copy' : 'the rest'} now (${megabytes(of.bytes - kept.bytes)})`,
    stopped: 'Go on now',
    full: 'There is room now: go on',
    whole: undefined,
  })[is];
