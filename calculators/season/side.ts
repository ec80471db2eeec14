import type { AbstractionRatio } from '../math/runoff/initialAbstractionIn.ts';
import type { grassDefaults, grazingDefaults } from './parameters.ts';
import type { MonthDay } from './weather.ts';

/** One fenced piece of ground. */
export interface Paddock {
  readonly areaAc: number;
  /** Cut for hay; otherwise it is grazed all season. */
  readonly isMeadow: boolean;
  /** From when a meadow may be grazed after its hay; nothing: never. */
  readonly grazedFrom?: MonthDay;
  /** Water that plants can draw from the root zone, and from its top foot. */
  readonly availableMm: number;
  readonly topAvailableMm: number;
  /** Water that evaporation can take from the surface, and how much of it before it slows. */
  readonly evaporableMm: number;
  readonly readilyEvaporableMm: number;
  /** Curve numbers of the ground's cover in poor, fair and good shape, and where the classes meet. */
  readonly poor: number;
  readonly fair: number;
  readonly good: number;
  readonly poorBelowPercent: number;
  readonly goodAbovePercent: number;
  readonly ceilingLbPerAc: number;
  readonly ratePerDay: number;
  /** Soil that bare, tilled ground would lose there in a year: R K LS P, tons an acre. */
  readonly bareLossTonPerAc: number;
}

export type Grass = typeof grassDefaults & {
  readonly abstractionRatio: AbstractionRatio;
  /** Ground cover that the runoff equation sees; left out, each side's own of the day. */
  readonly fixedCoverPercent?: number;
};

/** A row of stock: eats head times weight times percent a day, from one date up to another. */
export interface StockRow {
  readonly head: number;
  readonly weightLb: number;
  readonly intakePercent: number;
  readonly from: MonthDay;
  readonly to: MonthDay;
}

/** What is decided: when, how long, how short, and what happens when grass runs out. */
export type Management = typeof grazingDefaults & {
  readonly turnOut: MonthDay;
  readonly pull: MonthDay;
  /** Most days that the herd stays in a paddock, and least days that one rests before it may come back. */
  readonly mostDaysIn: number;
  readonly leastRestDays: number;
  readonly next: 'in-order' | 'most-grass';
  readonly stubbleLbPerAc: number;
  /** No paddock is ready: off to the hay until one is, or graze on. */
  readonly whenShort: 'pull' | 'stay';
  /** Off the grass for the season when feed ahead falls below so many days; 0: never. */
  readonly pullBelowDays: number;
  /** On this date a share of the stock is sold if feed ahead is below so many days; bought back at turn-out. */
  readonly sale?: { readonly on: MonthDay; readonly belowDays: number; readonly share: number };
  readonly cutOn: readonly MonthDay[];
  readonly feedingLossShare: number;
  /** Paddock, counted from 0, where hay is fed and its waste stays as litter; left out, it is fed off the pasture. */
  readonly feedPaddock?: number;
};

/** One management on its ground. */
export interface Side {
  readonly paddocks: readonly Paddock[];
  readonly grass: Grass;
  readonly stock: readonly StockRow[];
  readonly management: Management;
}

/** How each paddock stands before the first day. */
export interface Start {
  readonly greenLbPerAc: number;
  readonly deadLbPerAc: number;
  readonly litterLbPerAc: number;
  /** Share of the available water that is missing. */
  readonly depletedShare: number;
}
/** Made up; the run-up wears it off before anything is counted. */
export const usualStart: Start = { greenLbPerAc: 300, deadLbPerAc: 300, litterLbPerAc: 500, depletedShare: 0.2 };
