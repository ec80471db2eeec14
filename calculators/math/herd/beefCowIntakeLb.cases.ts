import { checkList } from '../checks.ts';
import { beefCowIntakeLb } from './beefCowIntakeLb.ts';

export default checkList('beefCowIntakeLb', [
  {
    what: '1,200 lb, TDN 50, pregnant and dry',
    ours: () => beefCowIntakeLb({ weightLb: 1200, tdnPercent: 50, pregnant: true, milkLb: 0 }),
    printed: '23.6',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
  {
    what: '1,200 lb, TDN 55, pregnant and dry',
    ours: () => beefCowIntakeLb({ weightLb: 1200, tdnPercent: 55, pregnant: true, milkLb: 0 }),
    printed: '23.5',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
  {
    what: '1,200 lb, TDN 60, pregnant and dry',
    ours: () => beefCowIntakeLb({ weightLb: 1200, tdnPercent: 60, pregnant: true, milkLb: 0 }),
    printed: '24.3',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
  {
    what: '1,200 lb, TDN 55, open, 20 lb of milk',
    ours: () => beefCowIntakeLb({ weightLb: 1200, tdnPercent: 55, pregnant: false, milkLb: 20 }),
    printed: '25.8',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
  {
    what: '1,200 lb, TDN 60, open, 20 lb of milk',
    ours: () => beefCowIntakeLb({ weightLb: 1200, tdnPercent: 60, pregnant: false, milkLb: 20 }),
    printed: '26.8',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
  {
    what: '1,400 lb, TDN 55, pregnant and dry',
    ours: () => beefCowIntakeLb({ weightLb: 1400, tdnPercent: 55, pregnant: true, milkLb: 0 }),
    printed: '26.4',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
  {
    what: '1,400 lb, TDN 60, open, 20 lb of milk',
    ours: () => beefCowIntakeLb({ weightLb: 1400, tdnPercent: 60, pregnant: false, milkLb: 20 }),
    printed: '29.6',
    source: 'nrc-beef-1996',
    where: 'Form of the equation, worked out apart',
    seen: 'computed',
  },
]);
