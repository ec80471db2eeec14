declare module 'virtual:workings' {
  /** Imports the drawn working of a calculator, by slug. */
  const workings: Readonly<Record<string, () => Promise<{ readonly default: string }>>>;
  export default workings;
}
