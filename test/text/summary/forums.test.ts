import html from '@bbob/html';
import preset from '@bbob/preset-html5';
import fc from 'fast-check';
import { marked } from 'marked';
import { describe, expect, test } from 'vitest';
import { inForm, TEXT_FORMS, textFormNames } from '../../../src/text/summary/forms.ts';
import type { Line } from '../../../src/text/summary/piece.ts';
import { summarise } from '../../../src/text/summary/summarise.ts';
import { anyText } from '../any-text.ts';
import { inputOf } from './demonstration.ts';

const ADDRESS = 'https://example.org/examples/two-pads/?a=0.5&v=1';
const base = inputOf();
const named = (label: string) =>
  summarise({
    ...base,
    parts: base.parts.map((part) => (part.id === 'receiver' ? { ...part, label } : part)),
    what: label,
    assumptions: [label, 'steady carrier'],
    made: label,
  });

/** Pieces of mischief, alone and put together; a few letters in front, so that a label is never empty. */
const hostile = fc
  .oneof(
    anyText(60),
    fc
      .array(
        fc.constantFrom(
          '[url=https://example.org]',
          '[/url]',
          '[img]',
          '[/b]',
          '[list]',
          '[*]',
          '[/list]',
          '**',
          '__',
          '~~',
          '<script>',
          '</li>',
          '<!--',
          '&lt;',
          '&#60;b&#62;',
          '```',
          '\n\n# ',
          '\n1. ',
          '![a](b)',
          '[a]: b',
          'www.example.org',
          'https://example.org/?a=b',
          'ftp://example.org',
          'somebody@example.org',
          '\u202e',
          '|---|',
          '\\',
          ' ',
        ),
        { maxLength: 10 },
      )
      .map((pieces) => pieces.join('')),
  )
  .map((text) => `Pad${text}`);

/** Boards make HTML's own brackets harmless before they look for their tags. */
const asBoard = (text: string): string =>
  html(text.replaceAll('<', '&lt;').replaceAll('>', '&gt;'), preset());
const asForum = (text: string): string => marked.parse(text, { async: false, gfm: true });

const tags = (page: string): readonly string[] => page.match(/<\/?[a-z][^>]*>/gi) ?? [];
const words = (page: string): string =>
  page
    .replace(/<\/?[a-z][^>]*>/gi, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ')
    .trim();
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

describe('a copied result in a forum', () => {
  test('that takes Markdown shows the same tags and one link, whatever the names in it', () => {
    const plain = tags(asForum(inForm('markdown', named('Pad'))));
    expect(plain.filter((tag) => tag.startsWith('<a '))).toEqual([
      `<a href="${ADDRESS.replace('&', '&amp;')}">`,
    ]);
    fc.assert(
      fc.property(hostile, (label) => {
        expect(tags(asForum(inForm('markdown', named(label))))).toEqual(plain);
      }),
    );
  });

  test('that takes BBCode shows the same tags and one link, whatever the names in it', () => {
    const plain = tags(asBoard(inForm('bbcode', named('Pad'))));
    expect(plain.filter((tag) => tag.startsWith('<a '))).toEqual([
      `<a href="${ADDRESS.replace('&', '&amp;')}">`,
    ]);
    fc.assert(
      fc.property(hostile, (label) => {
        expect(tags(asBoard(inForm('bbcode', named(label))))).toEqual(plain);
      }),
    );
  });

  test('says in Markdown, word for word, what the plain text with signs says', () => {
    const summary = named('20 dB pad *no. 3* [old] <b> 5_6_7 #1 a~b~c');
    const said = words(asForum(inForm('markdown', summary)));
    expect(said).toBe(oneLine(inForm('unicode', summary)).replace(`<${ADDRESS}>`, ADDRESS));
  });

  test('says in BBCode, word for word, what the plain text with signs says, brackets and asterisks exchanged', () => {
    const summary = named('20 dB pad *no. 3* [old] #1 a~b~c & more');
    const said = words(asBoard(inForm('bbcode', summary)));
    const plain = oneLine(inForm('unicode', summary)).replace(`<${ADDRESS}>`, ADDRESS);
    expect(said).toBe(plain.replaceAll('[old]', '(old)').replaceAll('*', '\u2217'));
  });

  test('shows the value first and in bold, and a line for each statement', () => {
    const summary = named('Pad');
    const first = words(asForum(inForm('markdown', summary)).split('</strong>')[0] ?? '');
    expect(first).toBe('Pad: 26.8 dBm \u00b12.5 dB (k = 2, 95.45 %); 480 mW, 270 to 840');
    // all lines but the first, and the address
    for (const page of [asForum(inForm('markdown', summary)), asBoard(inForm('bbcode', summary))])
      expect(page.match(/<li>/g)).toHaveLength(summary.lines.length);
  });
});

describe('the forms of a text', () => {
  test('each have a name of their own', () => {
    expect(new Set(TEXT_FORMS.map((form) => textFormNames[form])).size).toBe(TEXT_FORMS.length);
  });

  test('differ from each other', () => {
    expect(new Set(TEXT_FORMS.map((form) => inForm(form, named('Pad \u03a9')))).size).toBe(4);
  });

  test('write micro and ohm in ASCII as uW and ohm, and plus-minus as +/-, in 72 columns', () => {
    const line: Line = {
      kind: 'result',
      pieces: [{ foreign: 'Power: 3 \u00b5W \u00b11 \u03bcW into 50 \u03a9' }],
    };
    expect(inForm('ascii', { lines: [line], link: undefined })).toBe('Power: 3 uW +/-1 uW into 50 ohm');
    for (const row of inForm('ascii', named('A long name '.repeat(30)))
      .split('\n')
      .slice(0, -1))
      expect(row.length).toBeLessThanOrEqual(72);
  });
});
