import type { Migrations } from './migrate.ts';

/** Version 1 is the first: there is nothing older to read. The next one puts its step here and a folder of fixtures beside tests/place/fixtures/v1. */
export const placeMigrations: Migrations = {};
