// `npm run audit`: asks the registry for known faults of what the site is built with. Ends with an error where there are some; a registry that does not answer is told of, and stops nothing.
import { spawnSync } from 'node:child_process';
import { auditLine } from '../support/auditLine.ts';
import { root } from '../support/files.ts';

const { is, line } = auditLine(spawnSync('npm', ['audit', '--omit=dev', '--json'], { cwd: root, encoding: 'utf8' }).stdout);
console.log(line);
process.exitCode = is === 'faulty' ? 1 : 0;
