/** Refusals at one field by what is wrong there: `...faultsAt('cores', faultOf, { 'heavier-than-rock': '…' })`. */
export const faultsAt = <V, const A extends string, F extends string>(
  at: A,
  faultOf: (values: V) => F,
  says: Readonly<Partial<Record<NoInfer<F>, string>>>,
) =>
  Object.entries<string | undefined>(says).flatMap(([fault, say]) =>
    say === undefined ? [] : [{ at, when: (values: V) => faultOf(values) === fault, say }],
  );
