// A walk over everything takes long: every test run takes some of each kind, and a release all of them.
const isAll = process.env['HOLDWATER_WALK'] === 'all';

/** Pages of one making: those of one folder, and the workings of all calculators. */
const kindOf = (address: string): string => address.replace(/^(\/[^/]+\/)[^/]+\/(.*)$/, '$1*/$2');
const ofEachKind = 2;

/** The first two pages of each kind; before a release all. */
export function walked(addresses: readonly string[]): readonly string[] {
  if (isAll) return addresses;
  const taken = new Map<string, number>();
  return addresses.filter((address) => {
    const before = taken.get(kindOf(address)) ?? 0;
    taken.set(kindOf(address), before + 1);
    return before < ofEachKind;
  });
}
