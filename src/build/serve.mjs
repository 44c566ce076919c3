// Serves the built site and says where: `npm run serve -- --port 4321 --host 127.0.0.1 --dir .site --base /`; the path is the one
// that the site was built for unless it is said.
import { parseArgs } from 'node:util';
import { builtBase } from './built-base.ts';
import { serveSite } from './site-server.ts';

const { values } = parseArgs({
  options: {
    port: { type: 'string', default: process.env.PORT ?? '4321' },
    host: { type: 'string', default: '127.0.0.1' },
    dir: { type: 'string', default: process.env.SITE_OUT ?? '.site' },
    base: { type: 'string' },
  },
});

const { url } = await serveSite({
  directory: values.dir,
  base: values.base ?? (await builtBase(values.dir)),
  host: values.host,
  port: Number(values.port),
});
console.log(`The site is at ${url}  (Ctrl+C ends it)`);
