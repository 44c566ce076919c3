import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { headerProblems, manifestProblems, sitemapProblems } from './hosting.ts';
import type { Site } from './links.ts';
import { builtPages } from './pages.ts';

const made: string[] = [];
afterEach(() => {
  for (const directory of made.splice(0)) rmSync(directory, { recursive: true, force: true });
});
const policy = "default-src 'self';";
const page = `<meta http-equiv="content-security-policy" content="${policy}">`;

function site(files: Record<string, string | Buffer>, base = '/'): Site {
  const directory = mkdtempSync(join(tmpdir(), 'hosting-'));
  made.push(directory);
  for (const [file, body] of Object.entries({ 'index.html': page, ...files })) {
    mkdirSync(dirname(join(directory, file)), { recursive: true });
    writeFileSync(join(directory, file), body);
  }
  return { directory, base, pages: builtPages(directory) };
}
const rule = (path: string, ancestors: string): string =>
  `${path}\n  Content-Security-Policy: ${policy} frame-ancestors ${ancestors}\n  Referrer-Policy: no-referrer\n  Permissions-Policy: usb=()\n  X-Content-Type-Options: nosniff\n\n`;

test('a page whose stated headers are its own has nothing wrong', () => {
  const files = { 'embed/a/index.html': page, _headers: rule('/', "'none'") + rule('/embed/*', '*') };
  expect(headerProblems(site(files))).toEqual([]);
});

test.each([
  ['no rule', rule('/learn/*', "'none'")],
  ['a policy that lets it be framed', rule('/', '*')],
  ['a policy of another page', rule('/', "'none'").replace("'self'", "'none'")],
  ['no referrer policy', rule('/', "'none'").replace(/ {2}Referrer.*\n/, '')],
])('a page with %s is told', (_, headers) => {
  expect(headerProblems(site({ _headers: headers }))).not.toEqual([]);
});

/** The head of a PNG of that size. */
function png(pixels: number): Buffer {
  const head = Buffer.alloc(24);
  head.writeUInt32BE(pixels, 16);
  head.writeUInt32BE(pixels, 20);
  return head;
}
const manifest = (src: string, start = '/club/'): string =>
  JSON.stringify({ start_url: start, scope: '/club/', icons: [{ src, sizes: '192x192' }] });

test('a manifest leads into its own site, to icons of the size it says', () => {
  const problems = (text: string, pixels = 192): readonly string[] =>
    manifestProblems(site({ 'manifest.webmanifest': text, 'icons/a.png': png(pixels) }, '/club/'));
  expect(problems(manifest('/club/icons/a.png'))).toEqual([]);
  expect(problems(manifest('/icons/a.png'))).toEqual(['manifest: /icons/a.png']);
  expect(problems(manifest('/club/icons/b.png'))).toEqual(['manifest: /club/icons/b.png']);
  expect(problems(manifest('/club/icons/a.png'), 180)).toEqual(['manifest: /club/icons/a.png']);
  expect(problems(manifest('/club/icons/a.png', '/'))).toEqual(['manifest: /']);
});

test('a sitemap names every page but those that show what another says', () => {
  const map = (...paths: string[]): string =>
    paths.map((path) => `<loc>https://club.example${path}</loc>`).join('');
  const problems = (text: string, base = '/'): readonly string[] =>
    sitemapProblems(
      site(
        { 'sitemap-0.xml': text, '404.html': page, 'learn/index.html': page, 'stage/a/index.html': page },
        base,
      ),
    );
  expect(problems(map('/', '/learn/'))).toEqual([]);
  expect(problems(map('/'))).toEqual(['/learn/: not in the sitemap']);
  expect(problems(map('/', '/learn/', '/stage/a/'))).toEqual(['/stage/a/: in the sitemap']);
  expect(problems(map('/watt/', '/watt/learn/'), '/watt/')).toEqual([]);
  expect(problems(map('/watt/', '/learn/'), '/watt/'), 'an address without the base path').toEqual([
    '/learn/: not in the sitemap',
    'https://club.example/learn/: in the sitemap',
  ]);
});
