import { breath } from './breath.ts';

/** What somebody typed or chose before the script came: `hydrate` would overwrite it. */
export function earlyAnswers(root: Element): () => Promise<void> {
  const fields = [...root.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input[type="text"], input[type="date"], textarea')]
    .filter((field) => field.value !== field.defaultValue)
    .map((field) => [field.id, field.value] as const);
  const radios = [...root.querySelectorAll<HTMLInputElement>('input[type="radio"]')]
    .filter((field) => field.checked && !field.defaultChecked && field.id !== '')
    .map((field) => field.id);
  const selects = [...root.querySelectorAll('select')]
    .filter((field) => field.selectedOptions[0]?.defaultSelected === false)
    .map((field) => [field.id, field.value] as const);
  const put = (id: string, value: string, event: string) => {
    const field = document.getElementById(id);
    if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement || field instanceof HTMLTextAreaElement)) return;
    field.value = value;
    field.dispatchEvent(new Event(event, { bubbles: true }));
  };
  return async () => {
    // One at a time: each answer goes into the form as it stands after the one before.
    for (const [id, value] of fields) {
      put(id, value, 'input');
      await breath();
    }
    for (const [id, value] of selects) {
      put(id, value, 'change');
      await breath();
    }
    for (const id of radios) {
      document.getElementById(id)?.click();
      await breath();
    }
  };
}
