import type { Migration, Migrations } from './migrate.ts';

/** Written into every place; one with a higher version was made by a newer copy. A new one puts its step here and a folder of fixtures beside those of tests/place/fixtures. */
export const placeVersion = 3;

/** Units and the kind of country are a person’s, told once on their device. A place had room for both, and nothing read or wrote them there. */
const from1to2: Migration = ({ units, country, ...rest }) => rest;

/** Names of pastures that were taken away stay with the place; an older copy knew of none. */
const from2to3: Migration = (record) => record;

export const placeMigrations: Migrations = { 1: from1to2, 2: from2to3 };
