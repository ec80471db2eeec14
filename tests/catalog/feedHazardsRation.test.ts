import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/feed-hazards/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { printName } from '../../calculators/kit/print.ts';
import { commonGrazer, likelyIntakePercent } from '../../calculators/math/herd/likelyIntakePercent.ts';
import { planningIntakeGal } from '../../calculators/math/stockWater/planningIntakeGal.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { nitrogen, readingOf, saysIn } from './feedSlip.ts';

describe('feed-hazards: all they eat and drink in a day', () => {
  it('leads with feed and water together where only their sum passes a limit', () => {
    const query = nitrogen(650, '&other-feed=none&water-nitrate=no3-n&slip-nitrate=9&pregnant=yes');
    expect([readingOf(query), resultAt(runQuery(definition, query), 'feedReading')]).toEqual(['together-warned', 'feed-under']);
    expect(runQuery(definition, query).note).toMatch(/The feed’s nitrate: /);
  });

  /** Both feeds by their nitrate nitrogen, dry. */
  const two = (ppm: number, otherPpm: number, share: number, rest = '') =>
    `crop=other&${nitrogen(ppm, `&pregnant=yes&other-feed=tested&share=${share}&other-ppm=${otherPpm}${rest}`)}`;
  const at = (query: string, name: string) => resultAt(runQuery(definition, query), name);

  it('holds a second feed that was tested against the lists, by itself and in all they eat, water or no water', () => {
    // Half of 600 and of 4,500 ppm: 2,550, and Clemson allows pregnant animals none from 2,000 on; 4,500 alone is “potentially toxic, do not feed”.
    const high = two(600, 4500, 50);
    expect([at(high, 'rationPpm'), at(high, 'reading'), at(high, 'otherReading'), at(high, 'verdict')]).toEqual([
      2550,
      'ration-not',
      'other-none',
      'do-not-feed',
    ]);
    expect(saysIn(high)).toMatch(/Keep stock away from it now/);
    expect(saysIn(high)).toMatch(/Never turn hungry stock onto it/);
    expect(saysIn(high)).toMatch(/veterinarian at once/);
    expect(saysIn(high)).toMatch(/By itself the other feed is over a limit/);
    expect(runQuery(definition, high).note).toMatch(/hold 2,550 ppm NO3-N in dry matter; none of the other feed for any of them\./);
    // Clean water changes nothing.
    const dry = two(900, 3000, 10);
    expect(at(dry, 'verdict')).toBe('do-not-feed');
    expect(at(`${dry}&water-nitrate=no3-n&slip-nitrate=0`, 'verdict')).toBe('do-not-feed');
    // A tenth of 4,500 is over the lists by itself, though all they eat is not.
    expect([at(two(150, 4500, 95), 'reading'), at(two(150, 4500, 95), 'verdict')]).toEqual(['other-none', 'do-not-feed']);
    // Both low: nothing is said.
    expect(at(two(600, 150, 50), 'verdict')).toBe('under-every-limit');
  });

  it('does not take the other feed for the lower of the two', () => {
    // By hand: 97.4 percent of 600 and 2.6 of 4,500 is 700 ppm.
    const high = two(600, 4500, 99);
    expect([at(high, 'higherFeed'), at(high, 'mixing')]).toEqual(['other', 'ask-first']);
    expectWithin(Number(at(high, 'mixSharePercent')), 2.564, 5e-4);
    // 600 and 1,500: a ninth of the second comes to 700, so 11 percent stays under it.
    const some = two(600, 1500, 95);
    expect([at(some, 'mixing'), at(some, 'leadSharePercent'), at(some, 'restSharePercent')]).toEqual(['share', 11, 89]);
    expect(runQuery(definition, some).note).toMatch(/at most 11 %? ?of all they eat may be the other feed/);
    // The same two the other way about.
    const turned = two(1500, 600, 5);
    expect([at(turned, 'leadSharePercent'), at(turned, 'higherFeed')]).toEqual([11, 'this']);
    expectWithin(Number(at(some, 'rationPpm')), 645, 1e-6);
    expectWithin(Number(at(turned, 'rationPpm')), 645, 1e-6);
  });

  it('tells a share that, fed so, is read as under the level', () => {
    for (const [one, other] of [
      [1600, 150],
      [1581, 150],
      [600, 1400],
      [699, 701],
      [1990, 20],
      [1399, 0],
    ] as const) {
      const asked = two(one, other, 50);
      expect(at(asked, 'mixing'), `${one} and ${other}`).toBe('share');
      const lead = Number(at(asked, 'leadSharePercent'));
      const share = at(asked, 'higherFeed') === 'this' ? lead : 100 - lead;
      expect(Number(at(two(one, other, share), 'rationPpm')), `${one} and ${other}`).toBeLessThan(700);
    }
  });

  it('starts a ewe and a calf with what they weigh and eat', () => {
    const { animals, weightLb, eatenLbPerDay } = definition.inputs;
    const fills = (option: string) => (animals?.kind === 'choice' ? animals.options[option]?.fills : undefined);
    // Small ruminants (NRC 2007): a ewe with twins 4 to 5 percent of her weight. Growing cattle, the equation of the beef cattle book: 2.5.
    expect(fills('sheep-or-goats')).toEqual({ weightLb: 160, eatenLbPerDay: 6.4 });
    expect(fills('calves')).toEqual({ weightLb: 300, eatenLbPerDay: 7.5 });
    const [ewe, calf] = [commonGrazer('ewe-nursing'), commonGrazer('calf')];
    const eats = (weightLb: number, percent: number) => ({ weightLb, eatenLbPerDay: (weightLb * percent) / 100 });
    expect(fills('sheep-or-goats')).toEqual(eats(ewe.weightLb, ewe.intakePercent));
    expect(fills('calves')).toEqual(eats(calf.weightLb, likelyIntakePercent('growing-cattle', 'stocker')));
    // Back to the cow that the form starts with.
    expect(fills('adult-cattle')).toEqual({
      weightLb: weightLb?.kind === 'number' ? weightLb.default : 0,
      eatenLbPerDay: eatenLbPerDay?.kind === 'number' ? eatenLbPerDay.default : 0,
    });
    // By hand: 6.4 lb at 1,900 ppm is 5.516 g, for 160 lb 3.45 g a hundredweight.
    const asEwe = nitrogen(1900, '&animals=sheep-or-goats&weight=160lb&eaten=6.4lb/d&other-feed=none');
    expect(printName(definition, runQuery(definition, asEwe).values, 'gPerCwt', 'us')).toMatch(/^3\.45/);
    expect(saysIn(asEwe)).toMatch(/3 to 5 grams/);
    // A link from before may name a cow’s weight: it keeps its result, and says what is wrong with it.
    const old = nitrogen(1900, '&animals=sheep-or-goats&weight=1250lb&eaten=27lb/d&other-feed=none');
    expect(printName(definition, runQuery(definition, old).values, 'gPerCwt', 'us')).toMatch(/^1\.86/);
    expect(saysIn(old)).toMatch(/No calf, sheep or goat weighs this much/);
    expect(saysIn(asEwe)).not.toMatch(/No calf, sheep or goat weighs this much/);
  });

  it('lets an animal drink as the lists of stock water have it', () => {
    const drunk = (rest: string) => Number(at(`water-nitrate=no3-n&${rest}`, 'drunkGal'));
    // Noble Research Institute: 6 gallons at 50 degrees and 0.4 for each degree more, 24 at 95.
    expect(drunk('water-from=summer')).toBe(24);
    expect(drunk('water-from=summer')).toBe(planningIntakeGal('cow-nursing', 95).galPerDay);
    expect(drunk('water-from=winter')).toBe(planningIntakeGal('cow-nursing', 40).galPerDay);
    // Kansas State: 1.5 gallons for each 100 lb; of 2,000 lb that is more than any list has.
    expect(drunk('water-from=summer&weight=2000lb')).toBe(30);
    // The farm animal table has 4 for a goat, and no list for one goes by heat: half as much again is common practice.
    expect(drunk('water-from=winter&animals=sheep-or-goats&weight=160lb')).toBe(4);
    expect(drunk('water-from=summer&animals=sheep-or-goats&weight=160lb')).toBe(6);
    expect(drunk('water-from=known&water=17gal/d')).toBe(17);
  });

  it('says what a dry cow drinks in the cold, where the lists’ most is that of a nursing one', () => {
    // At 40 degrees: 6.0 (Kansas State, Table 1; Gould) and 9.2 (Montana State) dry, up to 12.2 (Montana State) nursing.
    const { help } = definition.inputs['waterFrom'] ?? {};
    const { leastGalPerDay, galPerDay } = planningIntakeGal('cow-dry', 40);
    expect(help).toContain(`a dry cow drinks ${Math.round(leastGalPerDay)} to ${Math.round(galPerDay)} gallons`);
    expect(Number(at('water-nitrate=no3-n&water-from=winter', 'drunkGal'))).toBe(12.2);
    expect(Number(at('water-nitrate=no3-n&water-from=known&water=9gal/d', 'drunkGal'))).toBe(9);
  });

  it('counts the water on top of the feed, so it leaves less room for it', () => {
    const shareAt = (mgPerL: number) =>
      Number(resultAt(runQuery(definition, `other-feed=tested&water-nitrate=no3-n&slip-nitrate=${mgPerL}`), 'mixSharePercent'));
    expect(shareAt(60)).toBeLessThan(shareAt(5));
    expect(Number(resultAt(runQuery(definition, 'forage-nitrate=not-tested&water-nitrate=no3-n'), 'feedG'))).toBe(0);
  });
});
