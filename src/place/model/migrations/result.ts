import type { Migrations } from './migrate.ts';

/** Version 1 is the first. */
export const resultMigrations: Migrations = {};
