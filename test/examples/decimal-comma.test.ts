import { describe, expect, it } from 'vitest';
import { exampleTexts } from '../../src/examples/copy.ts';
import { examples } from '../../src/examples/index.ts';

const VERSION = '1.2.3';

/** What keeps its point: addresses, and the version of the site. */
const without = (text: string): string =>
  text
    .replaceAll(/https?:\/\/\S+/g, '')
    .replaceAll('\\', '')
    .replaceAll(VERSION, '');

describe.each(examples)('the texts of $slug with decimal commas', (example) => {
  const link = `https://site.invalid/examples/${example.slug}/?a=0.5`;
  const texts = exampleTexts(example, { link, version: VERSION });

  it.each(texts)('have no decimal point left, as $name', ({ comma }) => {
    expect(without(comma).match(/.{0,40}\d\.\d.{0,20}/g) ?? []).toEqual([]);
  });

  it.each(texts)('say the same but for the signs of decimals, as $name', ({ text, comma }) => {
    const points = (words: string): string => words.replaceAll('\\', '').replaceAll(/(?<=\d),(?=\d)/g, '.');
    expect(points(comma)).toBe(points(text));
  });
});
