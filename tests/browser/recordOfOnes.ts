// The record of a kept place, on the phone of whoever keeps it, and as it lies in the browser's own database.
import type { Page } from '@playwright/test';
import type { Row } from '../../src/place/model/row.ts';
import { aHay, aHeight, aMove, aRain } from '../place/aRow.ts';
import { keepPlace, keepRows, keptRows, twoBench } from './placeOfOnes.ts';
import { placed } from './placePage.ts';

export const keepersPhone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

export const morning = new Date('2027-06-20T07:00:00');
export const placeId = twoBench.id;
const low = aMove({ placeId, inDay: '2027-06-08', paddockName: 'Low bench' });
export const record: readonly Row[] = [
  aMove({ id: 'm0', placeId, paddockId: 'high', inDay: '2027-05-20', outDay: '2027-06-08', heightInIn: 8, heightOutIn: 4, word: '=1+1' }),
  low,
  aHeight({ placeId, paddockId: 'high', day: '2027-06-15', heightIn: 5 }),
  aRain({ placeId, day: '2027-06-17', amountIn: 0.4 }),
  aHay({ placeId, day: '2027-06-09' }),
];
export async function open(page: Page, view: string, rows: readonly Row[] = record): Promise<void> {
  await page.clock.setFixedTime(morning);
  await page.goto('/about/');
  await keepPlace(page, twoBench);
  await keepRows(page, rows);
  await page.goto(`/place/#/${view}`);
  await placed(page);
}
export const moves = async (page: Page): Promise<readonly Row[]> => (await keptRows(page)).filter(({ is }) => is === 'move');
export const rain = async (page: Page): Promise<readonly Row[]> => (await keptRows(page)).filter(({ is }) => is === 'rain');
