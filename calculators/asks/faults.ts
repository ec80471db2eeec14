const found = new WeakMap<object, { readonly values: unknown; readonly fault: string }>();
/** What is wrong with these values: several refusals ask the same of them, and finding it can take as long as the answer. */
function faultIn<V, F extends string>(faultOf: (values: V) => F, values: V): string {
  const before = found.get(faultOf);
  if (before?.values === values) return before.fault;
  const fault = faultOf(values);
  found.set(faultOf, { values, fault });
  return fault;
}

/** Refusals at one field by what is wrong there: `...faultsAt('cores', faultOf, { 'heavier-than-rock': '…' })`. */
export const faultsAt = <V, const A extends string, F extends string>(
  at: A,
  faultOf: (values: V) => F,
  says: Readonly<Partial<Record<NoInfer<F>, string>>>,
) =>
  Object.entries<string | undefined>(says).flatMap(([fault, say]) =>
    say === undefined ? [] : [{ at, when: (values: V) => faultIn(faultOf, values) === fault, say }],
  );
