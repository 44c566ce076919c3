// Runs Astro's own command with its reporting of use switched off: `node src/build/astro.mjs build`.
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const astro = fileURLToPath(new URL('../../node_modules/.bin/astro', import.meta.url));
const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' };

spawn(astro, process.argv.slice(2), { stdio: 'inherit', env }).on('close', (code) => {
  process.exitCode = code ?? 1;
});
