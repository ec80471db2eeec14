import * as v from 'valibot';

const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const answered = v.object({
  vulnerabilities: v.record(v.string(), v.object({ severity: v.string() })),
  metadata: v.object({ vulnerabilities: v.object({ total: count }), dependencies: v.object({ prod: count }) }),
});
const refused = v.object({ message: v.string() });

export interface AuditLine {
  /** `unanswered` where the registry does not take such questions: nothing is known then, good or bad. */
  readonly is: 'clean' | 'faulty' | 'unanswered';
  readonly line: string;
}
const readJson = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/** What `npm audit --json` said, in one line. */
export function auditLine(printed: string): AuditLine {
  const said = readJson(printed);
  if (v.is(answered, said)) {
    const { total } = said.metadata.vulnerabilities;
    if (total === 0) return { is: 'clean', line: `npm audit: no known fault in ${said.metadata.dependencies.prod} packages` };
    const named = Object.entries(said.vulnerabilities).map(([name, { severity }]) => `${name} (${severity})`);
    return { is: 'faulty', line: `npm audit: known faults: ${named.join(', ')}` };
  }
  const why = v.is(refused, said) ? said.message : 'no answer';
  return {
    is: 'unanswered',
    line: `npm audit: NOT LOOKED UP, the registry did not answer (${why}). Ask again where it does, before anything is published.`,
  };
}
