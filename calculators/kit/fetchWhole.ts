import type { Calculator } from './define.ts';
import { fetchReaders } from './record/fetchReaders.ts';

/** Brings all that a definition leaves for later, so that it can be run at once: what reads its records, and what works it out where that runs long. */
export async function fetchWhole(calculator: Calculator): Promise<Calculator> {
  await Promise.all([fetchReaders(calculator.inputs), calculator.fetchEngine?.()]);
  return calculator;
}
