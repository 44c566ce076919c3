import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, posix, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { bytesOf, hashOf, type Listed, type ListedFile } from '../offline/listed.ts';
import { afterBuild } from './after-build.ts';

/** What pages are made of. */
const parts = /\.(html|css|js|svg|png|woff2|json|webmanifest)$/;
/** What messengers show of this site, what speaks to hosts, and the worker, which browsers keep by themselves. */
const notForReading = /^(cards|hosting)\/|^offline-worker\.js$/;

/** Whether a file of the built site is kept for use without a network. */
export const isKept = (file: string): boolean => parts.test(file) && !notForReading.test(file);

/** The built files that are kept, in the order of their paths. */
async function listedFiles(root: string): Promise<readonly ListedFile[]> {
  const entries = await readdir(root, { recursive: true });
  const files = entries.map((file) => file.replaceAll(sep, posix.sep)).filter(isKept);
  return Promise.all(
    files.sort().map(async (file): Promise<ListedFile> => {
      const body = await readFile(join(root, file));
      return [file.replace(/(^|\/)index\.html$/, '$1'), await hashOf(body), body.length];
    }),
  );
}

/** One classic script of a module with all that it imports. */
async function bundled(entry: string, define: Record<string, string>): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define,
    build: {
      write: false,
      target: 'es2022',
      lib: {
        entry: fileURLToPath(new URL(`../${entry}`, import.meta.url)),
        formats: ['iife'],
        name: 'offline',
      },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  const chunk = first && 'output' in first ? first.output[0] : undefined;
  if (chunk === undefined) throw new Error(`offline: wish a script of ${entry}, got none`);
  return chunk.code;
}

/**
 * Writes the worker that keeps the whole site in the browser, the small script by which each page starts it, and the one that this script
 * fetches for whoever reads numbers with a comma. It has to come after whatever else changes files: it lists them by their bytes.
 */
export const offline = () =>
  afterBuild('offline', async ({ root, base }, logger) => {
    await writeFile(join(root, 'offline.js'), await bundled('offline/register.ts', {}));
    await writeFile(join(root, 'sign.js'), await bundled('layouts/shown-sign.ts', {}));
    const listed: Listed = { base, files: await listedFiles(root) };
    const worker = await bundled('offline/worker.ts', { __LISTED__: JSON.stringify(listed) });
    await writeFile(join(root, 'offline-worker.js'), worker);
    const { length } = listed.files;
    logger.info(`${length} files, ${bytesOf(listed.files)} bytes, for use without a network`);
  });
