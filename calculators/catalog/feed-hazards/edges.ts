import { always, defineEdges, edge, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

const dry = 'forage-nitrate=no3-n&basis=dry';
const others = `${dry}&pregnant=no`;
const alone = `${dry}&other-feed=none`;
const fed = `${alone}&weight=1000lb&eaten=20lb/d`;
const mixed = `${dry}&other-feed=tested`;
const ppm = (at: number) => `nitrate-ppm=${at}`;
const noFeed = 'forage-nitrate=not-tested';

export default defineEdges(definition, {
  limits: {
    nitratePpmCount: [0, 200_000],
    nitratePercent: [0, 20],
    prussicPpmCount: [0, 20_000],
    dryMatterPercent: [5, 100],
    slipNitrateMgPerL: [0, 5000],
    slipSulfateMgPerL: [0, 20_000],
    slipSaltsMgPerL: [0, 50_000],
    conductivityCount: [0, 80],
    weightLb: [40, 3000],
    eatenLbPerDay: [0.5, 90],
    sharePercent: [1, 100],
    otherPpmCount: [0, 20_000],
    waterGalPerDay: [0, 50],
    ownLimitPpmCount: [50, 5000],
  },
  edges: [
    always('Nothing here clears a feed'),
    // 3 grams for 100 lb: 30 g in a cow of 1,000 lb, from 20 lb of feed, is 3,306.9 ppm.
    edge('This is as much nitrate', { on: fed, raised: ppm(3307), silent: ppm(3306) }),
    edge('Speed matters. Feed that is', { on: fed, raised: ppm(3307), silent: ppm(3306) }),
    edge('At least one list says not', { on: others, raised: ppm(2100), silent: ppm(2099) }),
    edge('At least one list says not', { on: dry, raised: ppm(2000), silent: ppm(1999) }),
    edge('For pregnant stock the strictest table allows this feed as no more than a', { on: dry, raised: ppm(1400), silent: ppm(1399) }),
    edge('For pregnant stock the strictest table allows this feed as no more than a', { on: dry, raised: ppm(1999), silent: ppm(2000) }),
    edge('For pregnant stock the strictest table allows this feed as no more than half', { on: dry, raised: ppm(700), silent: ppm(699) }),
    edge('For pregnant stock the strictest table allows this feed as no more than half', { on: dry, raised: ppm(1399), silent: ppm(1400) }),
    edge('The strictest table allows this feed as no more than half', { on: others, raised: ppm(1400), silent: ppm(1399) }),
    edge('The strictest table allows this feed as no more than half', { on: others, raised: ppm(1999), silent: ppm(2000) }),
    edge('The strictest table allows this feed as no more than about', { on: others, raised: ppm(2000), silent: ppm(1999) }),
    edge('The strictest table allows this feed as no more than about', { on: others, raised: ppm(3499), silent: ppm(3500) }),
    edge('The strictest table allows this feed as no more than a quarter', { on: others, raised: ppm(3500), silent: ppm(3499) }),
    edge('The strictest table allows this feed as no more than a quarter', { on: others, raised: ppm(3999), silent: ppm(4000) }),
    edge('The strictest table allows pregnant', { on: dry, raised: ppm(2000), silent: ppm(1999) }),
    edge('The strictest table allows pregnant', { on: dry, raised: ppm(3999), silent: ppm(4000) }),
    edge('The share of this feed', { on: `${mixed}&nitrate-ppm=1600`, raised: 'share=25.1pct', silent: 'share=25pct' }),
    edge('Stock that stagger, breathe hard,', { on: dry, raised: ppm(700), silent: ppm(699) }),
    edge('A strip or drops in', { raised: 'tested-by=field-strip', silent: '' }),
    edge('A strip or drops in', {
      on: 'tested-by=field-strip&forage-nitrate=not-tested&water-nitrate=no3-n',
      raised: 'prussic-acid=tested',
      silent: 'prussic-acid=not-tested',
    }),
    tells('by a field strip, which clears nothing', { told: 'tested-by=field-strip', untold: 'tested-by=laboratory' }),
    tells('A quarter is ServiTech', { told: 'pregnant=yes', untold: 'pregnant=no' }),
    edge('The slip’s word is not', { raised: '', silent: 'forage-nitrate=no3' }),
    edge('The slip’s word is not', { on: noFeed, raised: 'water-nitrate=not-said', silent: 'water-nitrate=no3' }),
    edge('The slip’s word is not', { on: noFeed, raised: 'water-sulfate=not-said', silent: 'water-sulfate=so4' }),
    edge('Dry or as fed is', { raised: '', silent: 'basis=dry' }),
    edge('The water was not tested', { raised: '', silent: 'water-nitrate=no3' }),
    edge('The other feed was not', { raised: '', silent: 'other-feed=none' }),
    edge('Never turn hungry stock onto', { on: dry, raised: ppm(700), silent: ppm(699) }),
    edge('These lists were written mostly', { raised: 'animals=sheep-or-goats', silent: '' }),
    edge('Sorghum kinds and indiangrass: keep', { raised: '', silent: 'crop=other' }),
    edge('Hay and silage of these', { raised: '', silent: 'crop=other' }),
    edge('Prussic acid was not tested.', { raised: '', silent: 'prussic-acid=tested' }),
    edge('Over 500 ppm dry, or', { raised: 'prussic-acid=tested', silent: '' }),
    edge('Corn from a drought year:', { raised: 'crop=other', silent: '' }),
    edge('Hay with sweetclover in it:', { raised: 'crop=other', silent: '' }),
    edge('Foxtail (German) millet hay is', { raised: 'crop=other', silent: '' }),
    edge('Silage and wrapped bales that', { raised: 'feed-form=silage', silent: '' }),
    edge('Silage and wrapped bales that', { raised: 'feed-form=baleage', silent: '' }),
    edge('This is more sulfate than', { on: 'water-sulfate=so4', raised: 'slip-sulfate=1000mg/l', silent: 'slip-sulfate=999mg/l' }),
    edge('Sulfur in feed, mineral and', { raised: 'water-sulfate=so4-s', silent: '' }),
    edge('Sulfur in feed, mineral and', { raised: 'water-salts=dissolved-solids', silent: '' }),
    edge('Nothing was tested, so there', { raised: noFeed, silent: '' }),
    edge('These lists are for cattle,', { raised: 'animals=horses', silent: '' }),
    turns('verdict', { 'do-not-feed': ppm(2000), limited: ppm(1999) }, { on: dry }),
    turns('verdict', { 'under-every-limit': ppm(699), limited: ppm(700) }, { on: dry }),
    turns('verdict', { 'harm-named': ppm(2000), limited: ppm(1999) }, { on: others }),
    turns('mixing', { 'ask-first': ppm(2000), share: ppm(1999) }, { on: mixed }),
    turns('mixing', { share: ppm(700), 'no-share-named': ppm(699) }, { on: mixed }),
    turns('mixing', { 'no-room': 'other-ppm=700', share: 'other-ppm=699' }, { on: `${mixed}&nitrate-ppm=1600` }),
    turns('mixing', { 'ask-first': 'other-feed=tested', 'not-asked': '' }, { on: `${dry}&nitrate-ppm=2000` }),
  ],
});
