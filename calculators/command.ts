// The `calc` command. What Node made of our files is kept for the next time: a table in parts starts many times over, and each start takes half as long.
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

enableCompileCache(join(import.meta.dirname, '../node_modules/.cache/calc'));
// Only what is loaded from here on is kept.
const { runCommand } = await import('./command/commandLine.ts');
await runCommand(process.argv.slice(2));
