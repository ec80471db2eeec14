import type { CanopyHeight } from '../../tables/pastureCover.ts';
import { checkList, tableChecks } from '../checks.ts';
import { pastureCoverFactor } from './pastureCoverFactor.ts';

const plain = (coverPercent: number): number =>
  pastureCoverFactor({ coverPercent, coverKind: 'grass', canopyPercent: 0, canopyHeight: 'short-brush' });
const heights: Readonly<Record<string, CanopyHeight>> = { '4 m': 'trees', '2 m': 'tall-brush', '0.5 m': 'short-brush' };

export default checkList('pastureCoverFactor', [
  {
    what: 'dryland pasture, 50.4 % of the ground covered by grass and litter',
    ours: () => plain(50.4),
    printed: '0.07',
    source: 'colorado-permit-c-81-008',
    where: 'cover factor',
    seen: 'print',
  },
  ...tableChecks({
    columns: ['factor'],
    text: `
      10 0.33
      20 0.20
      30 0.15
      40 0.10
      50 0.07
      60 0.042
      70 0.024
      80 0.013
      90 0.008
      100 0.003`,
    what: (cover) => `pasture, ${cover} % covered`,
    ours: (cover) => plain(Number(cover)),
    source: 'wischmeier-smith-1978',
    where: 'cover factor for pasture, table derived from it by others',
    seen: 'transcription',
    differs: (cover) =>
      ['70', '90'].includes(cover) ? { by: '0.004', because: 'The derived table bends between the columns; practice goes straight.' } : undefined,
  }),
  {
    what: 'the same pasture, on logarithms between the columns of 40 and 60 %',
    ours: () => pastureCoverFactor({ coverPercent: 50.4, coverKind: 'grass', canopyPercent: 0, canopyHeight: 'short-brush', between: 'logarithms' }),
    printed: '0.0637',
    source: 'scs-agronomy-note-50-1982',
    where: 'table 1, worked in another program: 0.1 times 0.42 to the power 0.52',
    seen: 'computed',
  },
  // Bare ground under canopy, over bare ground without: what the canopy alone takes off.
  ...tableChecks({
    columns: Object.keys(heights),
    text: `
      10 0.97 0.95 0.92
      20 0.95 0.90 0.83
      30 0.92 0.85 0.75
      40 0.89 0.80 0.66
      50 0.87 0.75 0.58
      60 0.84 0.70 0.50
      70 0.81 0.65 0.41`,
    what: (canopy, height) => `bare ground under ${canopy} % canopy, drops from ${height}: share of the loss without canopy`,
    ours: (canopy, height) => {
      const canopyHeight = heights[height] ?? 'trees';
      const factor = (canopyPercent: number) => pastureCoverFactor({ coverPercent: 0, coverKind: 'grass', canopyPercent, canopyHeight });
      return factor(Number(canopy)) / factor(0);
    },
    source: 'wischmeier-smith-1978',
    where: 'cover factor due to canopies, table derived from it by others',
    seen: 'transcription',
    differs: () => ({ by: '0.013', because: 'The pasture table gives its bare-ground column to two places only.' }),
  }),
]);
