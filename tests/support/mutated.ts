/** `math/hay,math/herd` or `catalog/rain-on-ground`: where faults are put in just now. Nothing in every other run. */
const areas = (process.env['MUTATED'] ?? '').split(',').filter((area) => area !== '');

/** Are faults put into some folders only? Then a test of the whole has nothing to hold. */
export const isNarrowed = areas.length > 0;
/** All definitions, unless faults are put into some of them only. */
export const isWanted = (slug: string): boolean => !areas.some((area) => area.startsWith('catalog/')) || areas.includes(`catalog/${slug}`);
/** All files of the math package, unless faults are put into some of its topics only. */
export const isWantedPath = (path: string): boolean =>
  !areas.some((area) => area.startsWith('math/')) || areas.some((area) => path.startsWith(`calculators/${area}/`));
