import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterBuild, pageFiles } from './after-build.ts';
import { isWall } from './ahead.ts';

const WRITTEN_IN = /<script>[\s\S]*?<\/script>/g;
const LEAD = /<p class="lead\b[^>]*>[\s\S]*?<\/p>/;
const STEP = /<section class="slide\b/g;

/**
 * Where the first picture of a page may end: on the wall behind the first step, on a formula sheet behind what it is about, before the first
 * formula and its faces. Elsewhere undefined: there it ends well where the first island begins.
 */
function endOfFirst(file: string, html: string): number | undefined {
  if (isWall(file)) return [...html.matchAll(STEP)][1]?.index;
  const lead = file.startsWith('reference/formulas/') ? LEAD.exec(html) : null;
  return lead ? lead.index + lead[0].length : undefined;
}

/**
 * A page with the scripts that are written in it (what wakes islands) where its first picture may end. A browser that comes to such a script
 * waits for the style sheets, and draws what stands before it as soon as those are there: before the scripts too much makes the first picture
 * late, behind them is what it lacks.
 */
export function withFirstPicture(file: string, html: string): string {
  const end = endOfFirst(file, html);
  const scripts = html.match(WRITTEN_IN)?.join('');
  if (end === undefined || scripts === undefined) return html;
  const [before, after] = [html.slice(0, end), html.slice(end)].map((part) => part.replace(WRITTEN_IN, ''));
  return `${before}${scripts}${after}`;
}

/** Has each built page drawn first what its reader sees first. */
export const firstPicture = () =>
  afterBuild('first-picture', async ({ root }) => {
    for (const file of await pageFiles(root)) {
      const html = await readFile(join(root, file), 'utf8');
      const ordered = withFirstPicture(file, html);
      if (ordered !== html) await writeFile(join(root, file), ordered);
    }
  });
