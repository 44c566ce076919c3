// Builds the site once more with nothing kept from before, and looks whether every byte is the same: `npx node test/site/build-again.mjs`.
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { differences } from './same-files.ts';
import { built } from './under-base.mjs';

const again = '.cache/again';
const kept = '.cache/again-kept';
for (const directory of [again, kept]) rmSync(directory, { recursive: true, force: true });
const astro = fileURLToPath(new URL('../../src/build/astro.mjs', import.meta.url));
const env = { ...process.env, SITE_OUT: again, SITE_KEPT: kept };
const { status } = spawnSync(process.execPath, [astro, 'build', '--silent'], { stdio: 'inherit', env });
const found = status === 0 ? differences(built.directory, again) : ['the build failed'];
for (const difference of found.slice(0, 20)) console.log(difference);
console.log(found.length === 0 ? 'the same bytes' : `${found.length} files differ`);
process.exitCode = found.length === 0 ? 0 : 1;
