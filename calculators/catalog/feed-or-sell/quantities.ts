import { amount, table, word } from '../../kit/quantities.ts';

const dollars = (label: string, symbol: string, digits = 0) => amount(label, symbol, 'usd', digits);

export const quantities = {
  calfUsd: dollars('What a cow’s calf brings, on average', 'v_1'),
  countedCalfUsd: dollars('Calf sold in the time', 'v'),
  dailyCostUsdPerDay: amount('Cost of keeping a cow a day', 'c', 'usd/d', 2),
  agingUsd: dollars('Worth lost in a year by growing older', 'a'),
  feedingUsd: dollars('Feed and care until then', 'K_c'),
  olderUsd: dollars('Worth lost by growing older', 'K_a'),
  lossUsd: dollars('Share of cows that die', 'K_m'),
  keepingUsd: dollars('Cost of keeping a cow', 'K'),
  netSaleUsd: dollars('Money from the sale', 'P'),
  interestUsd: dollars('Interest on it', 'I'),
  rebuyingUsd: dollars('Cost of selling a cow and buying back', 'R'),
  verdict: word('By these numbers', {
    keep: 'Keep and feed, even if cows are cheap to buy back',
    sell: 'Sell and buy back, even if cows are high then',
    depends: 'It depends on what a cow costs when you buy back',
  }),
  keepAdvantageUsd: dollars('Keeping saves, a cow (minus: selling saves)', 'A', -1),
  lowAdvantageUsd: dollars('Keeping saves if cows are cheap then', 'A_{low}', -1),
  highAdvantageUsd: dollars('Keeping saves if cows are high then', 'A_{high}', -1),
  withCalfUsd: dollars('Keeping saves if a calf is sold in the time', 'A_{calf}', -1),
  withoutCalfUsd: dollars('Keeping saves if no calf is sold in the time', 'A_{none}', -1),
  calfTurnsIt: word('Does the calf alone turn the answer?', { yes: 'Yes', no: 'No' }),
  evenDays: amount('Days of feeding where both cost the same', 't_{even}', 'd'),
  evenBuyBackUsd: dollars('Buy-back price where both cost the same', 'B_{even}', -1),
  evenCostUsdPerDay: amount('Cost a day where both cost the same', 'c_{even}', 'usd/d', 2),
  evenHayUsdPerTon: amount('Hay price where both cost the same', 'q_{even}', 'usd/ton'),
  fedHead: amount('Cows that the hay on hand carries', 'n_F', 'head'),
  keptHead: amount('Cows kept', 'N - n', 'head'),
  soldPercent: amount('Share of the herd sold', 'n_\\%', 'pct', 1),
  planCostUsd: dollars('Cost of selling some and keeping the rest', 'T', -1),
  planSavedUsd: dollars('That saves, against keeping all (minus: costs more)', 'T_s', -1),
  swings: table('What the answer depends on most', {
    input: word('Only this moved', {
      'buy-back': 'Buy-back price, cheap to high',
      calf: 'Calf, none sold to one sold',
      days: 'Days until you buy back',
      'daily-cost': 'Cost a day',
      sale: 'What she brings today',
    }),
    lowEndUsd: dollars('Keeping saves at the low end', 'A_1', -1),
    highEndUsd: dollars('Keeping saves at the high end', 'A_2', -1),
    swingUsd: dollars('Between them', 'D', -1),
  }),
  byPrice: table('Both costs by the buy-back price', {
    priceUsd: dollars('Buy-back price', 'B_x', -1),
    keepCostUsd: dollars('Keep and feed', 'K_x', -1),
    rebuyCostUsd: dollars('Sell and buy back', 'R_x', -1),
  }),
} as const;
