// Builds the site a second time as a club would publish it, under a path of its host: `npx node test/site/under-base.mjs`.
import { spawnSync } from 'node:child_process';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** Where the build lies that the checks and the browser look at. */
export const built = { directory: process.env.SITE_OUT ?? '.site', base: '/' };
/** Where the second build lies, and the path it is made for. */
export const underBase = {
  directory: process.env.SITE_OUT_UNDER_BASE ?? '.cache/under-base',
  base: '/club/watt/',
  url: 'https://club.example/club/watt/',
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const astro = fileURLToPath(new URL('../../src/build/astro.mjs', import.meta.url));
  const { SITE_BASE: _, ...rest } = process.env;
  const env = { ...rest, SITE_URL: underBase.url, SITE_OUT: underBase.directory };
  process.exitCode =
    spawnSync(process.execPath, [astro, 'build', '--silent'], { stdio: 'inherit', env }).status ?? 1;
}
