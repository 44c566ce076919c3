// Builds the site and serves it: `npm start`.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const astro = fileURLToPath(new URL('./astro.mjs', import.meta.url));
const built = spawnSync(process.execPath, [astro, 'build'], { stdio: 'inherit' });
if (built.status === 0) await import('./serve.mjs');
else process.exitCode = built.status ?? 1;
