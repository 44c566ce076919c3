import { readFileSync } from 'node:fs';
import { create } from 'fontkit';
import subsetFont from 'subset-font';
import { expect, test } from 'vitest';
import { cutFont, KEPT_FEATURES, renamed } from '../../src/build/cut-font.ts';
import { fontCharacters } from '../../src/build/font-characters.ts';
import { FORMULA_FACES, fileOfFace } from '../../src/build/formula-face-names.ts';
import { cutFormulaFace, formulaCharacters, renderedFormulas } from '../../src/build/formula-faces.ts';
import { filesBelow } from '../rules/sources.ts';

const read = (path: string): Buffer => readFileSync(new URL(`../../${path}`, import.meta.url));

const original = () => read('node_modules/source-sans/VF/SourceSans3VF-Upright.ttf');

/** The characters that a face has, by number. */
function codePoints(file: Buffer): readonly number[] {
  const face = create(file);
  if (!('characterSet' in face)) throw new TypeError('wish one face in the file');
  return face.characterSet;
}

test('the face in the project is the one that `npm run fonts` makes', { timeout: 60_000 }, async () => {
  expect(Buffer.from(await cutFont(original())).equals(read('src/assets/fonts/page-one.woff2'))).toBe(true);
});

test('so are those of the formulas, which have every character that a formula is set with', {
  timeout: 60_000,
}, async () => {
  const rendered = renderedFormulas();
  expect(formulaCharacters(rendered, 'Main-Regular')).toMatch(/^(?!.*[&;])(?=.*\u2211)(?=.*1)(?=.*\u03a9)/u);
  expect(formulaCharacters(rendered, 'Math-Italic')).toMatch(/^(?!.*[1&;])(?=.*\u03b4)(?=.*P)/u);
  for (const face of FORMULA_FACES) {
    const characters = formulaCharacters(rendered, face);
    const whole = read(`node_modules/katex/dist/fonts/KaTeX_${face}.ttf`);
    const cut = Buffer.from(await cutFormulaFace(whole, characters));
    expect(cut.equals(read(`src/assets/fonts/${fileOfFace(face)}`)), `${face} is what is made now`).toBe(
      true,
    );
    const [had, has] = [whole, cut].map((file) => new Set(codePoints(file)));
    const wished = [...characters].filter((letter) => had?.has(letter.codePointAt(0) ?? 0));
    expect(wished.filter((letter) => !has?.has(letter.codePointAt(0) ?? 0))).toEqual([]);
    expect(has?.size).toBeLessThan(had?.size ?? 0);
  }
});

test('a cut face does not bear the reserved name, which its copyright line still declares', () => {
  const names = (font: Buffer): readonly string[] =>
    [
      ...font
        .toString('latin1')
        .replaceAll('\0', '')
        .matchAll(/SourceSans3/g),
    ].map(([name]) => name);
  const [before, after] = [original(), renamed(original())];
  expect(names(before).length).toBeGreaterThan(3);
  expect(after.length).toBe(before.length);
  expect(after.includes(Buffer.from('SourceSans3', 'utf16le').swap16())).toBe(false);
  expect(after.includes(Buffer.from('Reserved Font Name', 'utf16le').swap16())).toBe(true);
});

test('the face has every character that lessons and widgets write', () => {
  const kept = new Set(fontCharacters());
  const texts = filesBelow('src', ['.mdx', '.astro', 'strings.ts', 'words.ts']).flatMap(({ text }) => [
    ...text,
  ]);
  expect([...new Set(texts)].filter((character) => character !== '\n' && !kept.has(character))).toEqual([]);
});

/** A face as a browser shapes with it: where each glyph of a text ends, in units of the face. */
function advances(file: Buffer, text: string, features: Record<string, boolean>): readonly number[] {
  const face = create(file);
  if (!('unitsPerEm' in face)) throw new TypeError('wish one face in the file');
  // the whole face begins at a lighter weight than the cut one
  return face
    .getVariation({ wght: 600 })
    .layout(text, features)
    .positions.map(({ xAdvance }) => xAdvance);
}

test('letters and figures stand in the cut face as in the one it is cut from', async () => {
  const whole = original();
  // unpacked, for the library shapes no packed face that has weights
  const cut = Buffer.from(
    await subsetFont(read('src/assets/fonts/page-one.woff2'), fontCharacters(), { targetFormat: 'truetype' }),
  );
  const line = 'AVATAR, Tolerance: 0.11 ± 0.07 dB; 25 Ω, fi, “Yes”';
  for (const tnum of [false, true]) {
    const expected = advances(whole, line, { tnum });
    const found = advances(cut, line, { tnum });
    expect(found.length).toBe(expected.length);
    // weights between two masters are kept to whole units of a thousandth
    const apart = found.map((advance, index) => Math.abs(advance - (expected[index] ?? Number.NaN)));
    expect(Math.max(...apart)).toBeLessThan(1);
  }
  expect(advances(cut, 'AV', {}), 'pairs are drawn together').not.toEqual(
    advances(cut, 'AV', { kern: false }),
  );
  expect(new Set(advances(cut, '0123456789', { tnum: true })).size, 'figures of one width').toBe(1);
});

test('no style asks for a feature of the face that was not kept', () => {
  const sheets = filesBelow('src', ['.css']).map(({ text }) => text);
  const asked = new Set(
    sheets.flatMap((text) =>
      [...text.matchAll(/font-(?:variant|feature)[\w-]*:\s*([^;]+);/g)].map(([, value]) => value),
    ),
  );
  expect([...asked]).toEqual(['tabular-nums']);
  expect(KEPT_FEATURES).toContain('tnum');
});
