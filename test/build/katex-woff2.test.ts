import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { katexWoff2 } from '../../src/build/katex-woff2.ts';
import { rowsOf, TOPICS, type TopicId } from '../../src/formulas/index.ts';

const css = readFileSync(new URL('../../node_modules/katex/dist/katex.min.css', import.meta.url), 'utf8');
const { code } = katexWoff2().transform.handler(css);
const faces = (sheet: string): readonly string[] =>
  (sheet.match(/@font-face\s*\{[^}]*\}/g) ?? []).map((face) => /KaTeX_\w+/.exec(face)?.[0] ?? face);

test('of the faces in the stylesheet of KaTeX only woff2 files are left', () => {
  expect(code).not.toMatch(/\.(woff|ttf)\)/);
  expect(code.match(/\.woff2\)/g)).toHaveLength(faces(code).length);
});

test('only alphabets that no formula uses are taken out', () => {
  const unused = ['Caligraphic', 'Fraktur', 'SansSerif', 'Script', 'Typewriter'].map(
    (name) => `KaTeX_${name}`,
  );
  expect(new Set(faces(css).filter((face) => !faces(code).includes(face)))).toEqual(new Set(unused));
  const rows = (Object.keys(TOPICS) as TopicId[]).flatMap((topic) => rowsOf(topic));
  const tex = rows.flatMap((row) => [row.tex, ...Object.values(row.symbols).map((symbol) => symbol.tex)]);
  expect(tex.filter((text) => /\\(math|text)(cal|frak|sf|tt|scr)/.test(text))).toEqual([]);
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
