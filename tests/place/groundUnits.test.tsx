// Pastures and soils as a metric reader is shown them, all of them open, drawn without a browser.
import { render } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { Ground } from '../../src/place/ui/Ground.tsx';
import type { Session } from '../../src/place/ui/session.ts';
import { aPlace, withPasture } from './aPlace.ts';

it('the ground of a place names no acre to who counts in hectares', () => {
  // All that drawing asks of a session.
  const session = { change: () => {}, undo: undefined } as unknown as Session;
  const place = withPasture(aPlace(), 'low', { paddocks: [{ id: 'a1', name: 'West', areaAc: 12 }] });
  const words = (system: 'us' | 'si') =>
    render(<Ground place={place} session={session} system={system} isPrinting edition="0.1.0" forms={[]} />).replaceAll(/<[^>]*>/g, ' ');
  expect(words('us')).toMatch(/\bacres\b/);
  expect(words('si')).toMatch(/\bhectares\b/);
  expect(words('si')).not.toMatch(/\bacres?\b/i);
});
