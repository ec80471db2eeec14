type Makers<T> = { readonly [Name in keyof T]: () => T[Name] };

/**
 * Some fields, and others that are made when they are first read, once: a form shows its answer before it tells the note and the ranges of all other results,
 * and a key shall not wait for those.
 */
export function whenAsked<Ready extends object, Later extends object>(ready: Ready, makers: Makers<Later>): Ready & Later {
  const made = new Map<string, unknown>();
  const read = (name: string, make: () => unknown): unknown => {
    if (!made.has(name)) made.set(name, make());
    return made.get(name);
  };
  const getters = Object.fromEntries(
    Object.entries<() => unknown>(makers).map(([name, make]) => [name, { get: () => read(name, make), enumerable: true }]),
  );
  return Object.defineProperties({ ...ready }, getters) as Ready & Later;
}
