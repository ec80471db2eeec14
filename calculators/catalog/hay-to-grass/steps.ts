import { moneySteps, rangeSteps, savingsSteps } from './moneySteps.ts';
import { eatenSteps, lossesSteps } from './needSteps.ts';
import type { HayStep } from './step.ts';
import { haySteps, onHandSteps } from './supplySteps.ts';

export const steps: readonly HayStep[] = [...eatenSteps, ...lossesSteps, ...onHandSteps, ...haySteps, ...moneySteps, ...savingsSteps, ...rangeSteps];
