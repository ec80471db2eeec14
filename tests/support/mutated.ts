const mutated = process.env['MUTATED'] ?? '';
/** All definitions, unless faults are put into some of them only. */
export const isWanted = (slug: string): boolean => !mutated.startsWith('catalog/') || mutated.split(',').includes(`catalog/${slug}`);
