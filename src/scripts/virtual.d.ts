declare module 'virtual:workings' {
  import type { Markup } from '../../calculators/ui/markup.ts';

  /** Imports the drawn working of a calculator, by slug. */
  const workings: Readonly<Record<string, () => Promise<{ readonly default: readonly Markup[] }>>>;
  export default workings;
}

declare module 'virtual:long-examples' {
  import type { Outcome } from '../../calculators/kit/define.ts';

  /** Imports what the example of a calculator that runs long came to, by slug. Its values are only those that are asked; the others are the computed ones. */
  const examples: Readonly<Record<string, () => Promise<{ readonly default: Outcome }>>>;
  export default examples;
}
