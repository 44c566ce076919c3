import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { katexWoff2 } from '../../src/build/katex-woff2.ts';

test('of the faces in the stylesheet of KaTeX all the woff2 files are left, and no other', () => {
  const css = readFileSync(new URL('../../node_modules/katex/dist/katex.min.css', import.meta.url), 'utf8');
  const { code } = katexWoff2().transform.handler(css.replaceAll('),url', '), url'));
  expect(code.match(/\.woff2\)/g)).toHaveLength(css.match(/\.woff2\)/g)?.length ?? 0);
  expect(code).not.toMatch(/\.(woff|ttf)\)/);
});

test('the plugin takes only that stylesheet', () => {
  const { id } = katexWoff2().transform.filter;
  expect(['a/katex.min.css', 'a/katex.css', 'a/base.css', 'katex.mjs'].map((file) => id.test(file))).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
