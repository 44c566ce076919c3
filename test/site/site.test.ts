import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, describe, expect, test } from 'vitest';
import { brokenLinks, brokenResults, type Site, unfoundPages } from './links.ts';
import {
  fetchedFromElsewhere,
  headProblems,
  inlineStyles,
  invalidMarkup,
  weakPolicies,
  withoutVersion,
} from './markup.ts';
import { builtPages } from './pages.ts';
import { bareSymbols } from './spoken.ts';
import { underBase } from './under-base.mjs';
import { budget, weigh } from './weights.ts';

const made: string[] = [];
afterEach(() => {
  for (const directory of made.splice(0)) rmSync(directory, { recursive: true, force: true });
});

/** A site of the given files. */
function site(files: Record<string, string>, base = '/'): Site {
  const directory = mkdtempSync(join(tmpdir(), 'site-'));
  made.push(directory);
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(directory, file)), { recursive: true });
    writeFileSync(join(directory, file), text);
  }
  return { directory, base, pages: builtPages(directory) };
}
const start = (html: string, more: Record<string, string> = {}): Site =>
  site({ 'index.html': html, ...more });

test('a build that is missing is asked for by what makes it, the second one by its own script', () => {
  const nowhere = join(tmpdir(), 'no-site-here');
  expect(() => builtPages(nowhere)).toThrow(`wish a built site (npm run build), got ${nowhere}`);
  const { directory } = underBase;
  underBase.directory = nowhere;
  try {
    expect(() => builtPages(nowhere)).toThrow('(npx node test/site/under-base.mjs)');
  } finally {
    underBase.directory = directory;
  }
});

test('the pages of a site are found with their addresses', () => {
  const { pages } = site({ 'index.html': 'a', 'learn/index.html': 'b', '404.html': 'c', 'a.css': '' });
  expect(pages.map(({ path }) => path)).toEqual(['/404.html', '/', '/learn/']);
});

describe('a link', () => {
  const learn = { 'learn/index.html': '<p id="place">' };

  test.each([
    '/learn/',
    'learn/#place',
    '?a=1',
    'https://host.example/',
    'mailto:a@host.example',
    '/learn/#v=1',
  ])('to %s leads somewhere', (href) => expect(brokenLinks(start(`<a href="${href}">`, learn))).toEqual([]));

  test.each([
    ['/learn', 'no slash at the end'],
    ['/none/', 'no such file'],
    ['/learn/#none', 'no such place on the page'],
    ['#none', 'no such place on the page'],
  ])('to %s is told: %s', (href, problem) => {
    expect(brokenLinks(start(`<a href="${href}">`, learn))).toEqual([`index.html: ${href}: ${problem}`]);
  });

  test('leaves a base path only to be told', () => {
    const html = '<a href="/learn/"><a href="/club/learn/">';
    const club = site({ 'index.html': html, ...learn }, '/club/');
    expect(brokenLinks(club)).toEqual(['index.html: /learn/: outside /club/']);
  });

  test('to the script of an island is followed, one in a comment or script is not', () => {
    const html =
      '<astro-island component-url="/a.js"></astro-island><!-- <a href="/b"> --><script>\'<a href="/c">\'</script>';
    expect(brokenLinks(start(html))).toEqual(['index.html: /a.js: no such file']);
  });
});

describe('what can be found', () => {
  const index = (...stored: readonly object[]): string => JSON.stringify({ storedFields: { ...stored } });
  const learn = (): Site => start('', { 'learn/index.html': '<p id="place">' });

  test('leads somewhere, and so does each of its parts', () => {
    const parts = [{ at: '' }, { at: 'place' }];
    expect(
      brokenResults(learn(), index({ path: '/learn/', parts }, { path: '/learn/#place', parts: [] })),
    ).toEqual([]);
  });

  test.each([
    [{ path: '/none/', parts: [] }, 'search: /none/: no such file'],
    [{ path: '/learn/#none', parts: [] }, 'search: /learn/#none: no such place on the page'],
    [{ path: '/learn/', parts: [{ at: 'gone' }] }, 'search: /learn/#gone: no such place on the page'],
  ])('is told where it does not: %o', (stored, problem) =>
    expect(brokenResults(learn(), index(stored))).toEqual([problem]),
  );

  test('is told where it is nothing', () =>
    expect(brokenResults(learn(), index())).toEqual(['the index is empty']));

  test('is every page of the sitemap but the first one, the search itself and what only leads on', () => {
    const files = { 'learn/index.html': '', 'old/index.html': '<a href="/learn/" data-moved>' };
    const mapped = ['/', '/search/', '/learn/', '/old/', '/words/'];
    const words = { path: '/words/#pad', parts: [] };
    expect(unfoundPages(start('', files), mapped, index(words))).toEqual(['search: /learn/ is not found']);
    const learnt = { path: '/learn/', parts: [] };
    expect(unfoundPages(start('', files), mapped, index(words, learnt))).toEqual([]);
  });
});

describe('the weight of a page', () => {
  const gz = (text: string): number => gzipSync(text, { level: 9 }).length;

  test('takes each chunk once, with what it imports and without what it may fetch later', () => {
    const files = {
      'a.js': 'import{x}from"./b.js";import"./c.js";const y=()=>import("./later.js")',
      'b.js': 'import"./c.js";export const x=1',
      'c.js': 'globalThis.z=1',
      'later.js': 'export const big=1',
    };
    const heavy = start(
      '<astro-island component-url="/a.js" renderer-url="/c.js"></astro-island><script>s()</script>',
      files,
    );
    const wished = gz(files['a.js']) + gz(files['b.js']) + gz(files['c.js']) + gz('s()');
    expect(weigh(heavy, heavy.pages[0] as Site['pages'][number]).script).toBe(wished);
  });

  test('states the script that keeps the site apart from the script of the page', () => {
    const files = { 'offline.js': 'keep()', 'a.js': 'globalThis.z=1' };
    const page = start('<script src="/offline.js"></script><script src="/a.js"></script>', files);
    const { script, offline } = weigh(page, page.pages[0] as Site['pages'][number]);
    expect({ script, offline }).toEqual({ script: gz(files['a.js']), offline: gz(files['offline.js']) });
  });

  test('counts style sheets, inline styles and a face that is named twice', () => {
    const html =
      '<link rel="stylesheet" href="/a.css"><style>b{}</style><link rel="preload" href="/f.woff2"><style>@font-face{src:url("/f.woff2")}</style>';
    const styled = start(html, { 'a.css': 'a{}', 'f.woff2': '12345' });
    const weight = weigh(styled, styled.pages[0] as Site['pages'][number]);
    expect(weight.css).toBe(gz('a{}') + gz('b{}') + gz('@font-face{src:url("/f.woff2")}'));
    expect(weight.font).toBe(5);
    expect(weight.html).toBe(gz(html));
  });

  test.each([
    ['/', 40_000],
    ['/about/', 3000],
    ['/learn/', 3000],
    ['/learn/decibels/halves/', 40_000],
    ['/examples/two-pads/', 40_000],
    ['/examples/', 3000],
    ['/stage/learn/decibels/halves/', 45_000],
    ['/bench/', 90_000],
    ['/search/', 25_000],
  ])('of %s may be %i bytes of script', (path, script) => {
    expect(budget(path).script).toBe(script);
  });
});

describe('the markup of a page', () => {
  const policy = "default-src 'self'; object-src 'none'; base-uri 'none'";
  const meta = (content: string): string =>
    `<meta http-equiv="content-security-policy" content="${content}">`;

  test('may not nest what HTML does not nest', () => {
    const page = (body: string): Site =>
      start(`<!DOCTYPE html><html lang="en"><head><title>a</title></head><body>${body}</body></html>`);
    expect(invalidMarkup(page('<p>a</p>'))).toEqual([]);
    expect(invalidMarkup(page('<p><div>a</div></p>')).length).toBeGreaterThan(0);
    expect(invalidMarkup(page('<p id="a">a</p><p id="a">b</p>'))[0]).toContain('no-dup-id');
  });

  test('may keep no style attribute', () => {
    expect(inlineStyles(start('<p style="a:b">'))).toHaveLength(1);
    expect(inlineStyles(start('<p class="a"> style="</p><script>\'<p style="a:b">\'</script>'))).toEqual([]);
  });

  test('has a policy without holes', () => {
    expect(weakPolicies(start(meta(policy)))).toEqual([]);
    for (const weak of [
      '',
      meta("default-src 'self'"),
      meta(`${policy}; script-src 'unsafe-inline'`),
      meta(`${policy}; img-src https:`),
    ]) {
      expect(weakPolicies(start(weak))).toHaveLength(1);
    }
  });

  test('fetches nothing from elsewhere, though it may link there', () => {
    expect(
      fetchedFromElsewhere(
        start('<a href="https://host.example/"><link rel="canonical" href="https://host.example/">'),
      ),
    ).toEqual([]);
    for (const tag of [
      '<img src="//host.example/a.png">',
      '<link rel="stylesheet" href="https://host.example/a.css">',
    ]) {
      expect(fetchedFromElsewhere(start(tag))).toHaveLength(1);
    }
  });

  test('has one heading of the first order, and a title and a description of its own', () => {
    const page = (title: string): string =>
      `<title>${title}</title><meta name="description" content="${title}"><h1>a</h1>`;
    expect(headProblems(site({ 'index.html': page('a'), 'b/index.html': page('b') }))).toEqual([]);
    expect(headProblems(site({ 'index.html': page('a'), 'b/index.html': page('a') }))).toHaveLength(2);
    expect(headProblems(start(`${page('a')}<h1>b</h1>`))).toEqual(['index.html: wish one h1']);
    expect(headProblems(start('<h1>a</h1>'))).toEqual(['index.html: no title', 'index.html: no description']);
  });

  test('says at its foot which version made it', () => {
    const foot = (text: string): Site => start(`<footer class="site-foot">${text}</footer>`);
    expect(withoutVersion(foot('Version 1.2.0. '), '1.2.0')).toEqual([]);
    expect(withoutVersion(foot('Version 1.1.0. '), '1.2.0')).toEqual([
      'index.html: does not say version 1.2.0',
    ]);
    expect(withoutVersion(start('<main>without a foot</main>'), '1.2.0')).toHaveLength(1);
    for (const other of ['<html lang="en" class="stage">', '<main class="embed">'])
      expect(withoutVersion(start(other), '1.2.0')).toEqual([]);
  });
});

describe('what is said and not shown', () => {
  const wrong = (html: string) => bareSymbols(start(html));

  test.each([
    '<input aria-valuetext="−3.0 dB">',
    '<button aria-label="Hands for: 1.99\u00a0W"></button>',
    '<svg><title>a</title><desc>It is known within ±u.</desc></svg>',
    '<svg role="img"><title id="a">95&nbsp;% of the sums</title></svg>',
    '<img alt="50 &#937;">',
  ])('is told where a unit or a sign is no word: %s', (html) => expect(wrong(html)).toHaveLength(1));

  test.each([
    '<p>−3.0 dB</p>',
    '<input aria-valuetext="minus 3.0 decibels">',
    '<section aria-label="20 dB pad: what it adds"></section>',
    '<section aria-label="Examples: ILAC-G8:09/2019, EA-4/02: a weight"></section>',
    '<a aria-label="What 20 dB down does: link to this step"></a>',
    '<svg><title>A part of its own</title><desc>Two hands, each at its V.</desc></svg>',
  ])('is right in words, and what is shown is another matter: %s', (html) => expect(wrong(html)).toEqual([]));
});
