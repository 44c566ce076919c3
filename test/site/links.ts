import { existsSync, statSync } from 'node:fs';
import { join, posix } from 'node:path';
import type { BuiltPage } from './pages.ts';

export interface Site {
  /** Folder of the built site. */
  readonly directory: string;
  /** Base path with its slash at the end. */
  readonly base: string;
  readonly pages: readonly BuiltPage[];
}

const origin = 'http://site.invalid';
const decode = (text: string): string =>
  text.replaceAll('&quot;', '"').replaceAll('&#38;', '&').replaceAll('&amp;', '&');

/** The page without comments and without what scripts hold, where what looks like an attribute is none. */
const markup = (html: string): string =>
  html.replace(/<!--[\s\S]*?-->/g, '').replace(/(<script\b[^>]*>)[\s\S]*?<\/script>/g, '$1');

/** Values of the given attributes, anywhere in the page. */
export function attributeValues(html: string, names: readonly string[]): readonly string[] {
  const found = markup(html).matchAll(new RegExp(`\\s(?:${names.join('|')})="([^"]*)"`, 'g'));
  return [...found].map(([, value]) => decode(value ?? ''));
}

/** Every address in the page, those of its islands' scripts included. */
function addresses(html: string): readonly string[] {
  const single = ['href', 'src', 'poster', 'component-url', 'renderer-url', 'before-hydration-url'];
  const sets = attributeValues(html, ['srcset']).flatMap((set) => set.split(',').map((one) => one.trim()));
  return [...attributeValues(html, single), ...sets.map((one) => one.split(/\s+/)[0] ?? '')];
}

/** What is wrong with an address inside the site; nothing if it leads to a file, and to a place that the page has. */
function wrong(site: Site, ids: ReadonlyMap<string, ReadonlySet<string>>, url: URL): string | undefined {
  if (!url.pathname.startsWith(site.base)) return `outside ${site.base}`;
  const path = decodeURIComponent(url.pathname.slice(site.base.length));
  const file = path === '' || path.endsWith('/') ? posix.join(path, 'index.html') : path;
  if (!existsSync(join(site.directory, file))) return 'no such file';
  if (statSync(join(site.directory, file)).isDirectory()) return 'no slash at the end';
  const fragment = decodeURIComponent(url.hash.slice(1));
  const state = fragment.includes('='); // a bench address keeps its state where others name a place
  return fragment && !state && ids.get(file)?.has(fragment) === false
    ? 'no such place on the page'
    : undefined;
}

/** Where each page has places to lead to, by its file. */
const placesOf = ({ pages }: Site): ReadonlyMap<string, ReadonlySet<string>> =>
  new Map(pages.map(({ file, html }) => [file, new Set(attributeValues(html, ['id', 'name']))]));

/** What the index of the search has of each thing: its address without the base path, and its places. */
const storedIn = (
  index: string,
): readonly { readonly path: string; readonly parts: readonly { at: string }[] }[] =>
  Object.values((JSON.parse(index) as { storedFields: Record<string, never> }).storedFields);

/** Addresses in the index of the search that lead nowhere; an index without any is told as well. */
export function brokenResults(site: Site, index: string): readonly string[] {
  const places = placesOf(site);
  const found = storedIn(index).flatMap(({ path, parts }) => [
    path,
    ...parts.filter(({ at }) => at !== '').map(({ at }) => `${path}#${at}`),
  ]);
  if (found.length === 0) return ['the index is empty'];
  return found.flatMap((path) => {
    const problem = wrong(site, places, new URL(site.base + path.slice(1), origin));
    return problem === undefined ? [] : [`search: ${path}: ${problem}`];
  });
}

/** Pages that nobody looks for by words: the first one, a list of what is found by itself, and the search. */
const NOT_SOUGHT = ['/', '/reference/', '/search/'];

/** Pages of the sitemap for which the search has no entry; one that only leads on to a new address needs none. */
export function unfoundPages({ pages }: Site, mapped: readonly string[], index: string): readonly string[] {
  const found = new Set(storedIn(index).map(({ path }) => path.replace(/#.*$/, '')));
  const leadOn = pages.filter(({ html }) => html.includes('data-moved')).map(({ path }) => path);
  return mapped
    .filter((path) => !found.has(path) && !leadOn.includes(path) && !NOT_SOUGHT.includes(path))
    .map((path) => `search: ${path} is not found`);
}

/** Addresses that lead nowhere, each with its page; addresses of other sites are not followed. */
export function brokenLinks(site: Site): readonly string[] {
  const ids = placesOf(site);
  return site.pages.flatMap(({ file, path, html }) => {
    const here = new URL(site.base + path.slice(1), origin);
    return addresses(html)
      .filter((address) => !/^(mailto|data|blob):/.test(address))
      .map((address) => ({ address, url: new URL(address, here) }))
      .filter(({ url }) => url.origin === origin)
      .map(({ address, url }) => ({ address, problem: wrong(site, ids, url) }))
      .filter(({ problem }) => problem !== undefined)
      .map(({ address, problem }) => `${file}: ${address}: ${problem}`);
  });
}
