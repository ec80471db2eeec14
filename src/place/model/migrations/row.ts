import type { Migrations } from './migrate.ts';

/** Version 1 of a row is the first. */
export const rowMigrations: Migrations = {};
