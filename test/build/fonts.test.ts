import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { cutFont, renamed } from '../../src/build/cut-font.ts';
import { fontCharacters } from '../../src/build/font-characters.ts';
import { filesBelow } from '../rules/sources.ts';

const read = (path: string): Buffer => readFileSync(new URL(`../../${path}`, import.meta.url));

const original = () => read('node_modules/source-sans/VF/SourceSans3VF-Upright.ttf');

test('the face in the project is the one that `npm run fonts` makes', { timeout: 60_000 }, async () => {
  expect(Buffer.from(await cutFont(original())).equals(read('src/assets/fonts/page-one.woff2'))).toBe(true);
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
