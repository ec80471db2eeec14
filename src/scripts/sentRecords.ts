/** Records that a worker keeps; whoever types one changes it at each key. */
const mostKept = 4;

/** Page and worker forget alike, so that the page knows what the worker has. */
export function forgetOldest(kept: Map<unknown, unknown>): void {
  for (const oldest of kept.keys()) {
    if (kept.size <= mostKept) return;
    kept.delete(oldest);
  }
}
