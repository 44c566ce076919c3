import { describe, expect, test } from 'vitest';
import { headersText, htaccessText, nginxText, readHeadersText } from '../../src/build/header-files.ts';
import { headerRules, headersFor } from '../../src/build/header-rules.ts';
import { policyOf } from '../../src/build/hosting.ts';

const policy = "default-src 'self';script-src 'self' 'sha256-abc=';";
const site = (base: string) =>
  headerRules({
    base,
    policy,
    folders: ['learn', 'embed', '_astro', 'bench', 'stage'],
    files: ['404.html', 'offline-worker.js'],
  });

describe.each(['/', '/club/watt/'])('a site at %s', (base) => {
  const rules = site(base);
  const at = (path: string): Readonly<Record<string, string>> => headersFor(rules, base + path);
  const pages = ['', '404.html', 'learn/', 'learn/decibels/halves/', 'bench/', 'embed/band/'];

  test.each([...pages, '_astro/a.js'])(
    'has just one rule for %s, for hosts join those of several',
    (path) => {
      const fitting = rules.filter(
        (rule) => headersFor([rule], base + path)['Referrer-Policy'] !== undefined,
      );
      expect(fitting).toHaveLength(1);
      expect(at(path)).toMatchObject({
        'Referrer-Policy': 'no-referrer',
        'X-Content-Type-Options': 'nosniff',
      });
    },
  );

  test.each(pages)('sends %s with the policy that the page carries', (path) => {
    expect(at(path)['Content-Security-Policy']).toContain(policy);
  });

  test('lets a worker fetch from here alone, and tells files nothing that only pages heed', () => {
    const { 'Content-Security-Policy': ofFile = '', ...others } = at('_astro/a.worker.js');
    expect(ofFile).toContain("default-src 'none'");
    expect(ofFile.match(/'[^']*'|https?:|\*/g)).toEqual(["'none'", "'self'", "'self'"]);
    expect(Object.keys(others).sort()).toEqual([
      'Cache-Control',
      'Referrer-Policy',
      'X-Content-Type-Options',
    ]);
  });

  test('may be framed in what is meant for it, and nowhere else', () => {
    for (const path of ['', '404.html', 'learn/', 'bench/']) {
      expect(at(path)['Content-Security-Policy']).toMatch(/; frame-ancestors 'none'$/);
      expect(at(path)['X-Frame-Options']).toBe('DENY');
    }
    expect(at('embed/band/')['Content-Security-Policy']).toMatch(/; frame-ancestors \*$/);
    expect(at('embed/band/')).not.toHaveProperty('X-Frame-Options');
    expect(at('stage/talk/')['Content-Security-Policy'], 'by this site').toMatch(/; frame-ancestors 'self'$/);
    expect(at('stage/talk/')['X-Frame-Options']).toBe('SAMEORIGIN');
  });

  test('is asked for anew, but for what has its hash in its name', () => {
    expect(at('_astro/a.js')['Cache-Control']).toContain('immutable');
    for (const path of ['', 'learn/', 'offline-worker.js'])
      expect(at(path)['Cache-Control']).toBe('no-cache');
  });

  test('lets pages observe nothing, and nobody else do anything', () => {
    const permissions = at('bench/')['Permissions-Policy'] ?? '';
    expect(permissions).toContain('camera=()');
    expect(permissions.split(', ').filter((each) => !/=\((self)?\)$/.test(each))).toEqual([]);
  });

  test('has no rule for what is not its own', () => {
    expect(headersFor(rules, '/elsewhere/')).toEqual({});
  });

  test('writes a file that says the same when read', () => {
    expect(readHeadersText(headersText(rules))).toEqual(rules);
  });

  test('sets the headers of pages for all that nginx serves, and those of folders that differ', () => {
    const text = nginxText(rules, base);
    const blocks = [...text.matchAll(/^location (\S+) \{\n([\s\S]*?)\n\}/gm)];
    expect(blocks.map(([, path]) => path).sort()).toEqual(
      [base, ...['_astro', 'embed', 'stage'].map((folder) => `${base}${folder}/`)].sort(),
    );
    const page = blocks.find(([, path]) => path === base)?.[2] ?? '';
    for (const [name, value] of Object.entries(at(''))) {
      expect(page).toContain(`add_header ${name} "${value}" always;`);
    }
    const lasting = blocks.find(([, path]) => path === `${base}_astro/`)?.[2] ?? '';
    expect(lasting, 'for a year only what is there').toMatch(/immutable";/);
    expect(page).toContain(`error_page 404 ${base}404.html;`);
  });

  test('takes from framed pages what forbids frames, where Apache httpd serves', () => {
    const text = htaccessText(rules, base);
    const [, framed = ''] = new RegExp(`m#\\^${base}embed/#">([\\s\\S]*?)</If>`).exec(text) ?? [];
    expect(framed).toContain('Header always unset X-Frame-Options');
    expect(framed).toContain('frame-ancestors *');
    expect(text).toMatch(/ {4}Header set Cache-Control "[^"]*immutable"/);
    expect(text).toContain(`ErrorDocument 404 ${base}404.html`);
  });
});

test('a file of headers may have comments and blank lines', () => {
  const text = '# rules\n\n/a/*\n  X-One: 1: 2\n\n  X-Two: b\n/b\n  X-One: 3\n';
  expect(readHeadersText(text)).toEqual([
    { path: '/a/*', headers: { 'X-One': '1: 2', 'X-Two': 'b' } },
    { path: '/b', headers: { 'X-One': '3' } },
  ]);
});

test('the policy is the page’s own, and a page without one stops the build', () => {
  expect(policyOf(`<meta http-equiv="content-security-policy" content="default-src 'self'; ">`)).toBe(
    "default-src 'self';",
  );
  expect(() => policyOf('<html>')).toThrow('got one without');
});
