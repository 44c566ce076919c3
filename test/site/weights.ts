import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { scriptBudget } from '../../src/build/script-budget.ts';
import { attributeValues, type Site } from './links.ts';
import type { BuiltPage } from './pages.ts';

/** Bytes of a page as they travel, compressed by gzip at its best. */
export interface Weight {
  readonly script: number;
  /** The script by which a page has the site kept for use without a network, the same on every page. */
  readonly offline: number;
  readonly html: number;
  readonly css: number;
  readonly font: number;
}

const gz = (body: string | Buffer): number => gzipSync(body, { level: 9 }).length;
const read = ({ directory, base }: Site, url: string): Buffer =>
  readFileSync(join(directory, url.slice(base.length)));

/** What a chunk imports when it is loaded; what it imports later, by call, is fetched only when it is used. */
const importsOf = (code: string): readonly string[] =>
  [...code.matchAll(/(?:from|import)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(([, path]) => path ?? '');

/** The chunks with all that they import, each once. */
function withImports(site: Site, urls: readonly string[]): ReadonlySet<string> {
  const all = new Set<string>();
  const add = (url: string): void => {
    if (all.has(url)) return;
    all.add(url);
    for (const path of importsOf(read(site, url).toString())) add(posix.join(posix.dirname(url), path));
  };
  for (const url of urls) add(url);
  return all;
}

const inlineScripts = (html: string): readonly string[] =>
  [...html.matchAll(/<script\b(?![^>]*\bsrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(([, code]) => code ?? '');
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** Weighs a page with everything that it loads by itself. */
export function weigh(site: Site, { html }: BuiltPage): Weight {
  const islands = attributeValues(html, ['component-url', 'renderer-url', 'before-hydration-url']);
  const scripts = [...html.matchAll(/<script\b[^>]*\bsrc="([^"]+)"/g)].map(([, url]) => url ?? '');
  const styles = [...html.matchAll(/<link\b[^>]*rel="stylesheet"[^>]*>/g)].flatMap(([tag]) =>
    attributeValues(tag, ['href']),
  );
  const inlineCss = [...html.matchAll(/<style\b[^>]*>([\s\S]*?)<\/style>/g)].map(([, css]) => css ?? '');
  const fonts = new Set([...html.matchAll(/[^"'()\s]+\.woff2/g)].map(([url]) => url));
  const isOffline = (url: string): boolean => url === `${site.base}offline.js`;
  const own = scripts.filter((url) => !isOffline(url));
  return {
    offline: sum(scripts.filter(isOffline).map((url) => gz(read(site, url)))),
    script:
      sum([...withImports(site, [...islands, ...own])].map((url) => gz(read(site, url)))) +
      sum(inlineScripts(html).map(gz)),
    html: gz(html),
    css: sum(styles.map((url) => gz(read(site, url)))) + sum(inlineCss.map(gz)),
    font: sum([...fonts].map((url) => read(site, url).length)),
  };
}

const kilo = 1000;
/** What a page may weigh: a figure is paid for where there is one; a page of text stays a page of text. */
export const budget = (path: string): Weight => ({
  script: scriptBudget(path),
  offline: kilo,
  html: 30 * kilo,
  css: 12 * kilo,
  font: 60 * kilo,
});
