/** Whoever added something goes on in its first field, once that is drawn. Every field of it has an id that begins with its own. */
export const goInto = (id: string): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(`:is(input, select, textarea)[id^="${id}-"]`)?.focus());
};
