import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'vite';
import { afterBuild } from './after-build.ts';
import { tokensPlugin } from './tokens-plugin.ts';

/** A worker of the site, as its widgets start it: a file beside the script, which a carried page has not. */
const WORKER = /new Worker\(new URL\('([^']+)', import\.meta\.url\), \{ type: 'module' \}\)/g;

/** Has workers start from the carried script itself, under the name of their own; `main.ts` tells by it what to do. */
export function workersWithin(code: string): string | undefined {
  const changed = code.replace(
    WORKER,
    (_, file: string) => `new Worker(globalThis.carriedScript, { name: '${file.split('/').at(-1) ?? ''}' })`,
  );
  return changed === code ? undefined : changed;
}

const inlineWorkers = (): Plugin => ({
  name: 'workers-within',
  enforce: 'pre',
  transform: (code, id) => (id.includes('/src/') ? workersWithin(code) : undefined),
});

/** Writes `carry/carry.js`: every island of the stage and its deck in one classic script, which a saved file takes along. */
export const carryScript = () =>
  afterBuild('carry-script', async ({ root, base }) => {
    await build({
      configFile: false,
      root: fileURLToPath(new URL('../..', import.meta.url)),
      base,
      publicDir: false,
      logLevel: 'error',
      plugins: [inlineWorkers(), tokensPlugin()],
      oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
      build: {
        outDir: join(root, 'carry'),
        emptyOutDir: true,
        modulePreload: false,
        lib: {
          entry: fileURLToPath(new URL('../stage/carry/main.ts', import.meta.url)),
          formats: ['iife'],
          name: 'carry',
          fileName: () => 'carry.js',
        },
      },
    });
  });
