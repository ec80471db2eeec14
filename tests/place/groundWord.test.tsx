import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import { staysOf } from '../../src/place/record/stays.ts';
import { groundWord } from '../../src/place/ui/groundWord.ts';
import { SumsTable } from '../../src/place/ui/RecordSums.tsx';
import { aPlace } from './aPlace.ts';
import { aMove } from './aRow.ts';

const todayDay = dayOf('2026-06-20') ?? Number.NaN;

describe('a place’s own word for its fenced ground', () => {
  it('is a paddock where nobody told another', () => {
    expect(groundWord({})).toEqual({ one: 'paddock', head: 'Paddock', heads: 'Paddocks' });
    expect(groundWord({ groundWord: 'trap' })).toEqual({ one: 'trap', head: 'Trap', heads: 'Traps' });
  });
  it('stands at the head of the record', () => {
    const sums = (place: ReturnType<typeof aPlace>): string => {
      const stays = staysOf(place, [aMove({ paddockId: 'low', inDay: '2026-05-01', outDay: '2026-05-08' })], { todayDay, year: 2026 });
      return render(<SumsTable place={place} ofYear={stays} year={2026} system="us" />);
    };
    expect(sums(aPlace({ groundWord: 'trap' }))).toMatch(/2026, trap by trap[\s\S]*Trap</);
    expect(sums(aPlace({ groundWord: 'trap' }))).not.toMatch(/paddock/i);
    expect(sums(aPlace())).toContain('2026, paddock by paddock');
  });
});
