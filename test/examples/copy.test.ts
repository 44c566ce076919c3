import bbob from '@bbob/html';
import html5 from '@bbob/preset-html5';
import { marked } from 'marked';
import { describe, expect, it } from 'vitest';
import { exampleTexts } from '../../src/examples/copy.ts';
import { examples } from '../../src/examples/index.ts';
import { lowOnTheScale } from '../../src/examples/low-on-the-scale.ts';
import { SITE_NAME } from '../../src/text/site-name.ts';

const link = (slug: string): string => `https://site.invalid/examples/${slug}/`;

/** Numbers of a text in order, whatever the form writes around them; a signed zero or an exponent's sign is no part of one. */
const numbers = (text: string): string =>
  (
    text
      .replaceAll(/\s+/g, ' ')
      .replaceAll('\\', '')
      .replaceAll('^2', '')
      .replaceAll('²', '')
      .match(/\d+(?:\.\d+)?/g) ?? []
  ).join(' ');

/** What a rendered text says, without its tags. */
const said = (html: string): string =>
  html
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll(/\s+/g, ' ');

describe.each(examples)('the texts of $slug', (example) => {
  const texts = exampleTexts(example, { link: link(example.slug), version: '1.2.3' });
  const textOf = (name: string): string => texts.find((form) => form.name === name)?.text ?? '';

  it('come in four forms', () => {
    expect(texts.map(({ name }) => name)).toEqual([
      'Plain text',
      'Plain text with signs',
      'Markdown',
      'BBCode',
    ]);
  });

  it('are ASCII in lines of 72 columns at most, the address in one piece, where they are plain', () => {
    const plain = textOf('Plain text');
    const lines = plain.split('\n');
    expect(lines.at(-1)).toBe(`<${link(example.slug)}>`);
    for (const line of lines.slice(0, -1)) expect(line.length, line).toBeLessThanOrEqual(72);
    expect(plain).toMatch(/^[\n\x20-\x7e]+$/);
    expect(plain, 'no sign without a likeness').not.toContain('?'.repeat(2));
  });

  it('give the same numbers in every form', () => {
    for (const { name, text } of texts) expect(numbers(text), name).toBe(numbers(textOf('Plain text')));
  });

  it('say what is given, the sum, what is assumed, that it is invented, and which version worked it out', () => {
    for (const { name, text } of texts) {
      const flat = text.replaceAll(/\s+/g, ' ').replaceAll('\\', '');
      expect(flat, name).toContain('Given: ');
      for (const { title } of example.steps().slice(0, 1))
        expect(flat.replaceAll('’', "'"), name).toContain(title.replaceAll('’', "'"));
      const [, assumed] = flat.split('Assumed: ');
      expect(assumed?.split('; ').length, name).toBeGreaterThanOrEqual(example.assumptions.length);
      expect(flat, name).toContain(`${SITE_NAME} 1.2.3, invented data`);
    }
  });

  it('come out of a Markdown library as a heading line and a list, nothing lost and one link', () => {
    const html = marked.parse(textOf('Markdown'), { async: false, gfm: true });
    expect(html.match(/<strong>/g)).toHaveLength(1);
    expect(html.match(/<ul>/g)).toHaveLength(1);
    expect(html.match(/<a /g)).toHaveLength(1);
    expect(html).toContain(`href="${link(example.slug)}"`);
    expect(html).not.toMatch(/<(?:em|code|del|h\d|img|table)\b/);
    expect(numbers(said(html))).toBe(numbers(textOf('Plain text with signs').replace(/[<>]/g, '')));
  });

  it('come out of a BBCode library as a heading line and a list, nothing lost and one link', () => {
    const html = bbob(textOf('BBCode'), html5());
    expect(html.match(/<a /g)).toHaveLength(1);
    expect(html).toContain(`href="${link(example.slug)}"`);
    expect(said(html)).not.toMatch(/\[\/?(?:b|list|url|\*)/);
    expect(numbers(said(html))).toBe(numbers(textOf('Plain text with signs').replace(/[<>]/g, '')));
  });
});

it('say about which of two values uneven limits lie: the mean of what it may be, not what was read', () => {
  // 3 W read are 34.77 dBm; within a third either way their mean in decibels is 34.69
  const [plain] = exampleTexts(lowOnTheScale, { link: link(lowOnTheScale.slug), version: '1.2.3' });
  expect(plain?.text.replaceAll(/\s+/g, ' ')).toContain('Worst case +1.3/-1.7 dB about 34.7 dBm, ');
});
