import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/ponding/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { expectWithin } from '../support/expectWithin.ts';

const runoffIn = (query: string): number => Number(resultAt(runQuery(definition, query), 'runoffIn'));

describe('ponding', () => {
  it('loses more of one rain the harder it falls', () => {
    const byMinutes = [20, 45, 90, 240, 720].map((minutes) => runoffIn(`rain=3in&hard=${minutes}min`));
    for (const [index, lost] of byMinutes.entries()) if (index > 0) expect(lost).toBeLessThan(byMinutes[index - 1] ?? 0);
  });
  it('claims no difference between two managements of one soil until two ring tests do', () => {
    expect(runoffIn('rings=none')).toBe(runoffIn('rings=both&ring-here=3in/hr&ring-there=3in/hr'));
    expect(runoffIn('rings=both&ring-here=3in/hr&ring-there=1in/hr')).toBeLessThan(runoffIn('rings=none'));
  });
  it('takes a storm cut into spells for the storm that it is', () => {
    const whole = runQuery(definition, 'storm=burst&rain=2in&hard=60min');
    const cut = runQuery(definition, 'storm=spells&spells.lasts=10min,20min,30min&spells.fell=1/3in,2/3in,1in');
    for (const name of ['runoffIn', 'soakedIn', 'pondsAfterMin'])
      expect(Math.abs(Number(resultAt(cut, name)) - Number(resultAt(whole, name)))).toBeLessThan(1e-9);
  });
  it('does not drain the ground in a pause: a conservative answer', () => {
    const straight = runoffIn('storm=spells&spells.lasts=20min,20min&spells.fell=1in,1in');
    const paused = runoffIn('storm=spells&spells.lasts=20min,120min,20min&spells.fell=1in,0in,1in');
    expect(Math.abs(paused - straight)).toBeLessThan(1e-9);
  });
  it('draws a burst to its end and no further', () => {
    const { curve } = runQuery(definition, 'storm=burst&rain=2in&hard=60min').values;
    const hours = Array.isArray(curve) ? curve.map((row) => Number(row['atHr'])) : [];
    expectWithin(Math.max(...hours), 1, 5e-10);
    expect(hours).toEqual(hours.toSorted((one, other) => one - other));
  });
  it('draws a curve in which nothing is lost: what runs off is what falls less what soaks in', () => {
    const { curve } = runQuery(definition, 'storm=day&rain=4in').values;
    if (!Array.isArray(curve)) throw new TypeError('no curve');
    for (const row of curve) {
      const [rain, intake, lost] = ['rainInPerHr', 'intakeInPerHr', 'lostInPerHr'].map((name) => Number(row[name]));
      expect(intake).toBeLessThanOrEqual(Number(rain) + 1e-12);
      expect(Math.abs(Number(intake) + Number(lost) - Number(rain))).toBeLessThan(1e-12);
    }
  });
  it('shows what loam and silt loam would give if the table had them the wrong way round, and no other soil', () => {
    const at = (query: string, name: string): number => Number(resultAt(runQuery(definition, query), name));
    for (const [texture, other, own] of [
      // Each soil as measured, with its own suction and six tenths of its own pores, and the rate that is printed for the other.
      ['loam', '0.65', { suction: '8.89cm', room: 0.6 * 43.4 }],
      ['silt-loam', '0.34', { suction: '16.68cm', room: 0.6 * 48.6 }],
    ] as const) {
      const query = `texture=${texture}&wetness=inches`;
      expect(runQuery(definition, query).shown).toContain('otherRunoffIn');
      expect(runQuery(definition, query).cautions.some(({ say }) => say.includes('wrong way round'))).toBe(true);
      const measured = `texture=own&conductivity=${other}cm/hr&suction=${own.suction}&room=${own.room}pct`;
      expect(Math.abs(at(query, 'otherRunoffIn') - at(measured, 'runoffIn'))).toBeLessThan(1e-9);
    }
    for (const texture of ['clay-loam', 'sandy-loam', 'own']) {
      expect(runQuery(definition, `texture=${texture}`).shown).not.toContain('otherRunoffIn');
      expect(runQuery(definition, `texture=${texture}`).cautions.some(({ say }) => say.includes('wrong way round'))).toBe(false);
    }
  });
});
