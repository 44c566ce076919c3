import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { benchResult } from '../../src/bench/result.ts';
import { exampleTexts } from '../../src/examples/copy.ts';
import { examples } from '../../src/examples/index.ts';
import { sumLines } from '../../src/examples/sum-lines.ts';
import { presetSheet } from '../../src/widgets/reading-band/presets.ts';
import { filesBelow } from '../rules/sources.ts';

/** Addresses that people have linked to: a slug is added and never taken away. */
const slugs = readFileSync(new URL('./slugs.txt', import.meta.url), 'utf8')
  .trim()
  .split('\n');

const link = (slug: string): string => `https://site.invalid/examples/${slug}/`;
/** A number as it is shown, its minus sign made one that reads. */
const numberIn = (text: string): number => Number(/[−+]?[\d.]+/.exec(text)?.[0].replace('−', '-'));
/** Text without line ends and the escapes of its form. */
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ').replaceAll('\\', '');

describe('the list of examples', () => {
  it('has every slug that was ever given out, and no other', () => {
    expect(examples.map(({ slug }) => slug).sort()).toEqual([...slugs].sort());
  });

  it('has slugs that are words of small letters, and titles that all differ', () => {
    for (const { slug } of examples) expect(slug).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(new Set(examples.map(({ title }) => title)).size).toBe(examples.length);
  });
});

describe.each(examples)('$slug', (example) => {
  const sheet = example.sheet();
  const { result } = benchResult(sheet).chain;

  it('has a sum whose lines add up to what it ends with', () => {
    const values = sumLines(sheet).map(({ value }) => value);
    const parts = values.slice(0, -1).filter((value) => value !== '');
    const sum = parts.reduce((total, value) => total + numberIn(value), 0);
    expect(sum).toBeCloseTo(numberIn(values.at(-1) ?? ''), 9);
    expect(sum).toBeCloseTo(result.estimate, 9);
    expect(
      parts.every((value) => /\u00a0dBm?$/.test(value)),
      'each with its unit',
    ).toBe(true);
  });

  it('has a line in the sum for every link, with what it may be wrong by', () => {
    const lines = sumLines(sheet);
    expect(lines.slice(1, -1).map(({ what }) => what)).toEqual(sheet.links.map(({ label }) => label));
    expect(lines.slice(1, -1).every(({ stated }) => stated.includes('dB'))).toBe(true);
    expect([lines[0]?.stated, lines.at(-1)?.stated]).toEqual(['', '']);
    expect(
      lines.slice(1, -1).map(({ value }) => value === ''),
      'a part without a loss adds nothing',
    ).toEqual(sheet.links.map(({ lossDb }) => lossDb === 0));
  });

  it('shows a figure of its own sheet', () => {
    expect(presetSheet(example.preset)).toEqual(sheet);
  });

  it('is better known in the same chain once it is better known', () => {
    const better = example.better.sheet();
    expect(better.links.map(({ id, lossDb }) => [id, lossDb])).toEqual(
      sheet.links.map(({ id, lossDb }) => [id, lossDb]),
    );
    expect(better.readings).toEqual(sheet.readings);
    expect(benchResult(better).chain.result.propagation.expanded).toBeLessThan(result.propagation.expanded);
  });

  it('leads to a lesson that there is', () => {
    const lessons = filesBelow('src/lessons', ['.mdx']);
    const lesson = lessons.find(({ path }) => path === `src/lessons/${example.lesson.id}.mdx`);
    expect(lesson?.text).toContain(`title: ${example.lesson.title}\n`);
  });

  it('has a plain text of ASCII in lines of 72 columns at most, the address in one piece', () => {
    const plain = exampleTexts(example, link(example.slug))[0]?.text ?? '';
    const lines = plain.split('\n');
    expect(lines.at(-1)).toBe(`<${link(example.slug)}>`);
    for (const line of lines.slice(0, -1)) expect(line.length, line).toBeLessThanOrEqual(72);
    expect(plain).toMatch(/^[\n\x20-\x7e]+$/);
  });

  it('gives the same numbers in every form of text', () => {
    const texts = exampleTexts(example, link(example.slug));
    expect(texts.map(({ name }) => name)).toEqual([
      'Plain text',
      'Plain text with signs',
      'Markdown',
      'BBCode',
    ]);
    const numbers = (text: string): string =>
      (
        flat(text)
          .replaceAll('−', '-')
          .match(/\d+(?:\.\d+)?/g) ?? []
      ).join(' ');
    for (const { name, text } of texts) expect(numbers(text), name).toBe(numbers(texts[0]?.text ?? ''));
  });

  it('names every assumption, with no full stop in the middle of the list', () => {
    for (const { name, text } of exampleTexts(example, link(example.slug))) {
      const [, line] = flat(text).split('Assumed: ');
      expect(line?.split('; '), name).toHaveLength(example.assumptions.length);
      expect(line, name).not.toMatch(/\.[;,]/);
    }
  });

  it('says that it is invented', () => {
    for (const { text } of exampleTexts(example, link(example.slug)))
      expect(flat(text)).toContain('invented data');
  });
});
