// The server that the browser tests start: `node tests/browser/serveDist.ts PORT`.
import { dist } from '../site/builtSite.ts';
import { serve } from './staticServer.ts';

await serve(dist, Number(process.argv[2]));
