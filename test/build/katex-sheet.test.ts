import { existsSync, readFileSync } from 'node:fs';
import katex from 'katex';
import { expect, test } from 'vitest';
import { FORMULA_FACES, fileOfFace } from '../../src/build/formula-face-names.ts';
import { classesIn, katexSheet, USED_CLASSES } from '../../src/build/katex-sheet.ts';
import { rowsOf, TOPICS, type TopicId } from '../../src/formulas/index.ts';

const css = readFileSync(new URL('../../node_modules/katex/dist/katex.min.css', import.meta.url), 'utf8');
const { code } = katexSheet().transform.handler(css);
/** The faces of a sheet by the names of their files, however they begin. */
const faces = (sheet: string): readonly string[] =>
  [...sheet.matchAll(/@font-face\s*\{[^}]*url\([^)]*_([\w-]+)\.woff2\)/g)].map(([, face]) => face ?? '');

test('of the faces in the stylesheet of KaTeX only woff2 files are left, cut and renamed', () => {
  expect(code).not.toMatch(/\.(woff|ttf)\)/);
  expect(code).not.toContain('KaTeX_');
  expect([...new Set(faces(code))].sort()).toEqual([...FORMULA_FACES].sort());
  for (const face of FORMULA_FACES) {
    expect(code).toContain(`url(/src/assets/fonts/${fileOfFace(face)})`);
    expect(existsSync(new URL(`../../src/assets/fonts/${fileOfFace(face)}`, import.meta.url))).toBe(true);
  }
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
const selectorsWithBodies = (sheet: string): readonly (readonly [string, string])[] =>
  [...sheet.matchAll(/([^{}]+)\{([^{}]*)\}/g)]
    .map(([, selector = '', body = '']) => [selector, body] as const)
    .filter(([selector]) => !selector.startsWith('@'));
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

test('a face is taken out only where no rule that is left asks for it', () => {
  // what a rule asks for: a family, and upright or slanted, regular or bold; a file's name says the same
  const asked = selectorsWithBodies(code).flatMap(([, body]) => {
    const [, family] = /font(?:-family)?:[^;]*Signs_(\w+)/.exec(body) ?? [];
    const slant = /font-style:\s*italic/.test(body) ? 'Italic' : '';
    const weight = /font-weight:\s*(bold|700)/.test(body) ? 'Bold' : '';
    return family === undefined ? [] : [`${family}-${`${weight}${slant}` || 'Regular'}`];
  });
  expect(asked.length).toBeGreaterThan(5);
  expect(new Set(asked)).toEqual(new Set(FORMULA_FACES));
  const tex = rows.flatMap((row) => [row.tex, ...Object.values(row.symbols).map((symbol) => symbol.tex)]);
  expect(tex.filter((text) => /\\(math|text)(cal|frak|sf|tt|scr|bf|it)|\\boldsymbol/.test(text))).toEqual([]);
});

test('a bar over a letter keeps the rule that centres it, which speaks of a class that the bar has not', () => {
  expect(css).toContain('.accent-body:not(.accent-full){width:0}');
  expect(code).toContain('.accent-body:not(.accent-full){width:0}');
  expect(made.has('accent-full')).toBe(false);
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
