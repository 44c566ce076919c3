import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { hoistedCss, hoistStyles, type Rules } from './hoist-style.ts';

interface Place {
  /** Folder of the built site. */
  readonly root: string;
  /** Base path with its slash at the end. */
  readonly base: string;
  /** Folder of hashed files, in `root`. */
  readonly assets: string;
}

async function writeStylesheet({ root, assets }: Place, css: string): Promise<string> {
  const name = `${assets}/inline.${createHash('sha256').update(css).digest('hex').slice(0, 8)}.css`;
  await mkdir(join(root, assets), { recursive: true });
  await writeFile(join(root, name), css);
  return name;
}

async function hoistSite(place: Place): Promise<void> {
  const files = (await readdir(place.root, { recursive: true })).filter((file) => file.endsWith('.html'));
  for (const file of files.sort()) {
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
export function hoistStylesIntegration(): AstroIntegration {
  let base = '/';
  let assets = '_astro';
  return {
    name: 'hoist-styles',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.replace(/\/?$/, '/');
        assets = config.build.assets;
      },
      'astro:build:done': ({ dir }) => hoistSite({ root: fileURLToPath(dir), base, assets }),
    },
  };
}
