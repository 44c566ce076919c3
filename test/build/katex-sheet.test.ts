import { readFileSync } from 'node:fs';
import katex from 'katex';
import { expect, test } from 'vitest';
import { classesIn, katexSheet, USED_CLASSES } from '../../src/build/katex-sheet.ts';
import { rowsOf, TOPICS, type TopicId } from '../../src/formulas/index.ts';

const css = readFileSync(new URL('../../node_modules/katex/dist/katex.min.css', import.meta.url), 'utf8');
const { code } = katexSheet().transform.handler(css);
const faces = (sheet: string): readonly string[] =>
  (sheet.match(/@font-face\s*\{[^}]*\}/g) ?? []).map((face) => /KaTeX_\w+/.exec(face)?.[0] ?? face);

test('of the faces in the stylesheet of KaTeX only woff2 files are left', () => {
  expect(code).not.toMatch(/\.(woff|ttf)\)/);
  expect(code.match(/\.woff2\)/g)).toHaveLength(faces(code).length);
});

const rows = (Object.keys(TOPICS) as TopicId[]).flatMap((topic) => rowsOf(topic));
const rendered = rows
  .flatMap((row) => [
    katex.renderToString(row.tex, { displayMode: true, output: 'htmlAndMathml' }),
    ...Object.values(row.symbols).map(({ tex }) => katex.renderToString(tex, { output: 'htmlAndMathml' })),
  ])
  .join('');
/** Classes that the formulas are made with, styled by the sheet or not. */
const made = new Set(
  [...rendered.matchAll(/class="([^"]*)"/g)].flatMap(([, names]) => (names ?? '').split(/\s+/)),
);
const selectors = (sheet: string): readonly string[] =>
  [...sheet.matchAll(/([^{}]+)\{[^{}]*\}/g)].flatMap(([, names]) => (names ?? '').split(','));

test('every rule that can meet a formula is left, and no other', () => {
  const styled = new Set(selectors(css).flatMap(classesIn));
  expect(new Set([...made].filter((name) => styled.has(name)))).toEqual(new Set(USED_CLASSES));
  const meets = selectors(css).filter(
    (each) => !each.startsWith('@') && classesIn(each).every((name) => made.has(name)),
  );
  expect(selectors(code).filter((each) => !each.startsWith('@'))).toEqual(meets);
  expect(code.length).toBeLessThan(css.length / 2);
});

test('only alphabets that no formula uses are taken out', () => {
  const unused = ['Caligraphic', 'Fraktur', 'SansSerif', 'Script', 'Typewriter'].map(
    (name) => `KaTeX_${name}`,
  );
  expect(new Set(faces(css).filter((face) => !faces(code).includes(face)))).toEqual(new Set(unused));
  const tex = rows.flatMap((row) => [row.tex, ...Object.values(row.symbols).map((symbol) => symbol.tex)]);
  expect(tex.filter((text) => /\\(math|text)(cal|frak|sf|tt|scr)/.test(text))).toEqual([]);
});

test('the plugin takes only that stylesheet', () => {
  const { id } = katexSheet().transform.filter;
  expect(['a/katex.min.css', 'a/katex.css', 'a/base.css', 'katex.mjs'].map((file) => id.test(file))).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
