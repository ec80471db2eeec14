// A walk over everything takes long: every test run takes some of each kind, and a release all of them.
export const isAll = process.env['HOLDWATER_WALK'] === 'all';

/** Left to the release, which runs what has this tag as well. */
export const long = { tag: '@long' } as const;
/** For one of many alike: every test run takes some. */
export const longUnless = (isTaken: boolean) => (isTaken ? {} : long);
