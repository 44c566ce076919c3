import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readHeadersText } from '../../src/build/header-files.ts';
import { headersFor } from '../../src/build/header-rules.ts';
import { policyOf } from '../../src/build/hosting.ts';
import type { Site } from './links.ts';

const read = ({ directory }: Site, file: string): string => readFileSync(join(directory, file), 'utf8');

/** Who may frame the pages of a folder; nobody any other. */
const ancestorsOf: Readonly<Record<string, string>> = { embed: '*', stage: "'self'" };

/** Pages for which the files for hosts state another policy than the page, or none, or one that lets others frame it. */
export function headerProblems(site: Site): readonly string[] {
  const rules = readHeadersText(read(site, '_headers'));
  return site.pages.flatMap(({ file, path, html }) => {
    const { 'Content-Security-Policy': stated = '', ...more } = headersFor(rules, site.base + path.slice(1));
    const ancestors = ancestorsOf[path.split('/')[1] ?? ''] ?? "'none'";
    const problems: string[] = [];
    if (stated !== `${policyOf(html)} frame-ancestors ${ancestors}`)
      problems.push('another policy than its own');
    for (const name of ['Referrer-Policy', 'Permissions-Policy', 'X-Content-Type-Options']) {
      if (!(name in more)) problems.push(`no ${name}`);
    }
    return problems.map((problem) => `${file}: ${problem}`);
  });
}

interface Manifest {
  readonly start_url: string;
  readonly scope: string;
  readonly icons: readonly { readonly src: string; readonly sizes: string }[];
}

/** Width and height that a PNG states. */
const pngSize = (png: Buffer): string => `${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`;

/** What of the manifest leads nowhere, or is not of the size that it says. */
export function manifestProblems(site: Site): readonly string[] {
  const { start_url, scope, icons } = JSON.parse(read(site, 'manifest.webmanifest')) as Manifest;
  const problems = [start_url, scope].filter((address) => address !== site.base);
  const wrong = icons.filter(({ src, sizes }) => {
    const file = join(site.directory, src.slice(site.base.length));
    if (!src.startsWith(site.base) || !existsSync(file)) return true;
    return sizes !== 'any' && pngSize(readFileSync(file)) !== sizes;
  });
  return [...problems, ...wrong.map(({ src }) => src)].map((address) => `manifest: ${address}`);
}

/** Addresses that the sitemap names, without origin and base path; one outside of the site stays as it is. */
export const sitemapPaths = (site: Site): readonly string[] =>
  [...read(site, 'sitemap-0.xml').matchAll(/<loc>([^<]*)<\/loc>/g)].map(([, url = '']) => {
    const { pathname } = new URL(url);
    return pathname.startsWith(site.base) ? pathname.slice(site.base.length - 1) : url;
  });

/** Pages that the sitemap forgets or should not name: the stage shows a lesson's own page, a frame its figure's. */
export function sitemapProblems(site: Site): readonly string[] {
  const named = sitemapPaths(site);
  const wished = site.pages
    .map(({ path }) => path)
    .filter((path) => path !== '/404.html' && !/^\/(stage|embed)\//.test(path));
  return [
    ...wished.filter((path) => !named.includes(path)).map((path) => `${path}: not in the sitemap`),
    ...named.filter((path) => !wished.includes(path)).map((path) => `${path}: in the sitemap`),
  ];
}
