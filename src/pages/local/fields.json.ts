import { localFields } from '../../local/localFields.ts';

/** Fetched by a calculator's page once somebody has picked a country. */
export const GET = (): Response => new Response(JSON.stringify(localFields), { headers: { 'content-type': 'application/json' } });
