/** A step to the next version: what was written as `v` n comes out as n + 1. It never changes what it is given. */
export type Migration = (record: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
/** Steps by the version that they begin with. */
export type Migrations = Readonly<Record<number, Migration>>;

export type Migrated =
  | { readonly is: 'current'; readonly value: unknown }
  /** Made by a newer copy: neither opened nor written. */
  | { readonly is: 'newer'; readonly v: number }
  | { readonly is: 'unreadable' };

/** Reads what may have been written by any edition. The same on reading and on import. */
export function migrate(steps: Migrations, current: number, raw: unknown): Migrated {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw) || !('v' in raw)) return { is: 'unreadable' };
  const written = raw.v;
  if (typeof written !== 'number' || !Number.isInteger(written) || written < 1) return { is: 'unreadable' };
  if (written > current) return { is: 'newer', v: written };
  let value: Readonly<Record<string, unknown>> = { ...raw };
  for (let from = written; from < current; from += 1) {
    const step = steps[from];
    if (step === undefined) throw new RangeError(`no migration from version ${from}`);
    value = { ...step(value), v: from + 1 };
  }
  return { is: 'current', value };
}
