import { readFileSync } from 'node:fs';
import subsetFont from 'subset-font';
import { expect, test } from 'vitest';
import { fontCharacters } from '../../src/build/font-characters.ts';
import { filesBelow } from '../rules/sources.ts';

const read = (path: string): Buffer => readFileSync(new URL(`../../${path}`, import.meta.url));

test('the face in the project is the one that `npm run fonts` makes', async () => {
  const made = await subsetFont(
    read('node_modules/source-sans/VF/SourceSans3VF-Upright.ttf'),
    fontCharacters(),
    {
      targetFormat: 'woff2',
      variationAxes: { wght: { min: 400, max: 700 } },
    },
  );
  expect(Buffer.from(made).equals(read('src/assets/fonts/source-sans-3.woff2'))).toBe(true);
});

test('the face has every character that lessons and widgets write', () => {
  const kept = new Set(fontCharacters());
  const texts = filesBelow('src', ['.mdx', '.astro', 'strings.ts', 'words.ts']).flatMap(({ text }) => [
    ...text,
  ]);
  expect([...new Set(texts)].filter((character) => character !== '\n' && !kept.has(character))).toEqual([]);
});
