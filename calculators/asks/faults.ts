let latest: { readonly faultOf: unknown; readonly values: unknown; readonly fault: string } | undefined;
/** What is wrong with these values: several refusals ask the same of them one after another, and finding it can take as long as the answer. */
function faultIn<V>(faultOf: (values: V) => string, values: V): string {
  if (latest?.faultOf !== faultOf || latest.values !== values) latest = { faultOf, values, fault: faultOf(values) };
  return latest.fault;
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
