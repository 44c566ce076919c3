import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterBuild, type BuiltSite, pageFiles } from './after-build.ts';
import { hoistedCss, hoistStyles, type Rules } from './hoist-style.ts';

async function writeStylesheet({ root, assets }: BuiltSite, css: string): Promise<string> {
  const name = `${assets}/inline.${createHash('sha256').update(css).digest('hex').slice(0, 8)}.css`;
  await mkdir(join(root, assets), { recursive: true });
  await writeFile(join(root, name), css);
  return name;
}

async function hoistSite(place: BuiltSite): Promise<void> {
  for (const file of await pageFiles(place.root)) {
    const html = await readFile(join(place.root, file), 'utf8');
    // A sheet for each page: one for all would bring every page the styles of every formula.
    const rules: Rules = new Map();
    const hoisted = hoistStyles(html, rules);
    if (rules.size === 0) continue;
    const name = await writeStylesheet(place, hoistedCss(rules));
    const link = `<link rel="stylesheet" href="${place.base}${name}"></head>`;
    await writeFile(join(place.root, file), hoisted.replace('</head>', link));
  }
}

/** Moves the inline styles of each built page into a stylesheet, so that the content policy needs no 'unsafe-inline'. */
export const hoistStylesIntegration = () => afterBuild('hoist-styles', hoistSite);
