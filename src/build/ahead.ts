import { readFile, writeFile } from 'node:fs/promises';
import { join, posix } from 'node:path';
import { afterBuild, pageFiles } from './after-build.ts';

/** Whether a page, a path in the built site, is drawn only when its scripts have run. */
export const isWall = (file: string): boolean => file.startsWith('stage/');

const PAGE_SCRIPT = /<script type="module" src="([^"]+)"/g;
const IMPORT = /\bimport\s*(?:[\w$\s{},*]+from\s*)?["'](\.\.?\/[^"']+)["']/g;

/** Files that a bundled script says at its top that it needs, as it names them. */
export const importsIn = (code: string): readonly string[] =>
  [...code.matchAll(IMPORT)].map(([, name]) => name ?? '');

/**
 * Addresses of what a page's own scripts need, each once, the scripts themselves left out: a browser finds those in the page.
 * @param codeAt what lies at an address.
 */
export async function neededBy(
  html: string,
  codeAt: (address: string) => Promise<string>,
): Promise<readonly string[]> {
  const scripts = [...html.matchAll(PAGE_SCRIPT)].map(([, address]) => address ?? '');
  const all = new Set(scripts);
  // a set goes through what is added meanwhile, too
  for (const address of all)
    for (const name of importsIn(await codeAt(address))) all.add(posix.join(posix.dirname(address), name));
  return [...all].filter((address) => !scripts.includes(address));
}

/**
 * Has the wall ask for what its scripts need together with them. Else a browser finds out when the first has come, and on a slow line
 * that is one way there and back more before the wall is as it stays. Other pages are drawn without their scripts, which are to keep back.
 */
export const askAhead = () =>
  afterBuild('ask-ahead', async ({ root, base }) => {
    const codeAt = (address: string): Promise<string> =>
      readFile(join(root, address.slice(base.length)), 'utf8');
    for (const file of (await pageFiles(root)).filter(isWall)) {
      const html = await readFile(join(root, file), 'utf8');
      const links = (await neededBy(html, codeAt)).map(
        (address) => `<link rel="modulepreload" href="${address}">`,
      );
      if (links.length > 0)
        await writeFile(join(root, file), html.replace('</head>', `${links.join('')}</head>`));
    }
  });
