// An office's file as a text, and what a page says of it.
import type { Page } from '@playwright/test';

/** The file with any data in it, right or wrong. */
export const fileOf = (data: unknown): string => `:root { --holdwater-office:\n${JSON.stringify(data, null, 2)}\n}\n`;
export const edition = (page: Page) => page.locator('[data-office-edition]');
