/** Opens the group of a question, then the line of a row: their fields are drawn once they are open. */
function open(form: Element | null, id: string, [key, index]: readonly string[]): void {
  const group = form?.querySelector<HTMLDetailsElement>(`details[data-asks~="${key}"]`);
  if (group) group.open = true;
  const rows = document.getElementById(`${id}-${key}`)?.querySelectorAll('.row') ?? [];
  // A long list is folded behind one line.
  (rows[Number(index)] ?? rows[0])?.querySelector<HTMLElement>('.row-line [aria-expanded="false"]')?.click();
}
/** The field at a path, or what is drawn of its row; of answers to tap the first. */
function fieldAt(id: string, path: readonly string[]): HTMLElement | null {
  const found = document.getElementById([id, ...path].join('-'));
  if (!found) return path.length > 1 ? fieldAt(id, path.slice(0, -1)) : null;
  return found.matches('fieldset') ? found.querySelector<HTMLElement>('input, select, button') : found;
}

/** What draws tables and records may still be on its way. */
const [lookMs, mostLooks] = [50, 40];
/** Puts the focus into the field at a path of a form, and opens what folds around it. */
export async function goTo(form: Element | null, id: string, at: string): Promise<void> {
  const path = at.split('.');
  for (let looks = 0; looks < mostLooks && !document.getElementById([id, ...path].join('-')); looks += 1) {
    open(form, id, path);
    await new Promise((done) => setTimeout(done, lookMs));
  }
  const field = fieldAt(id, path);
  for (let fold = field?.closest('details'); fold; fold = fold.parentElement?.closest('details')) fold.open = true;
  field?.scrollIntoView({ block: 'center' });
  field?.focus({ preventScroll: true });
}
