import fc from 'fast-check';
import { markdownToHtml } from 'satteri';
import { describe, expect, test } from 'vitest';
import { SITE_NAME } from '../../../src/text/site-name.ts';
import {
  asBbcode,
  asMarkdown,
  asPlainText,
  asSentence,
  asUnicodeText,
} from '../../../src/text/summary/format.ts';
import { shareableLink } from '../../../src/text/summary/link.ts';
import { summarise } from '../../../src/text/summary/summarise.ts';
import { anyText } from '../any-text.ts';
import { inputOf } from './demonstration.ts';

const wild = () =>
  fc.oneof(
    anyText(80),
    fc
      .array(
        fc.constantFrom(
          '[url=',
          ']',
          '[/b]',
          '**',
          '_',
          '<b>',
          '&lt;',
          '`',
          '~~',
          '\n',
          '# ',
          '- ',
          '![a](b)',
          'www.example.org',
          'https://example.org',
          '\u202e',
          '\u03a9',
          '$',
          '|',
          ' a',
        ),
        { maxLength: 12 },
      )
      .map((list) => list.join('')),
  );
// The sums are the same for any label: done once.
const base = inputOf();
const labelled = (label: string, extra: object = {}) =>
  summarise({
    ...base,
    parts: base.parts.map((part) => (part.id === 'receiver' ? { ...part, label } : part)),
    what: label,
    assumptions: [label],
    ...extra,
  });

/** From the chain's own sums; value, U and worst case agree with a calculation by hand: 26.8 dBm, 2.47 dB, 3.3 dB. */
const PLAIN = `Power at the socket: 26.8 dBm +/-2.5 dB (k = 2, 95.45 %);
  480 mW, 270 to 840
Whole distribution, 95.45 %: 24.6 to 29.0 dBm, 290 to 800 mW
Reading -13.4 dBm; added back: Cable 0.2 dB, Second pad 20.0 dB, First
  pad 20.0 dB
Taken: Receiver +/-2.0 dB, limits; Mismatch +/-0.2 dB, U-shaped; Cable
  +/-0.1 dB, limits; Second pad +/-0.5 dB, limits; First pad
  +/-0.5 dB, limits
Worst case +/-3.3 dB, 23.5 to 30.1 dBm, 0.22 to 1.02 W
Biggest part: Receiver, 88 % of the variance
Specification 25.5 to 28.5 dBm: can't tell: this measurement shows
  neither inside nor outside (guard band of 1 times U; decided by the
  whole distribution; probability of conformity 73 %). Nothing could be
  inside with this uncertainty: the method falls short, not the
  transmitter; it would take +/-1.5 dB or better
Assumed: steady carrier; 50 ohm; pads not hot
Worked out with ${SITE_NAME}, version 0
<https://example.org/examples/two-pads/?a=0.5&v=1>`;

describe('laws of copied results', () => {
  test('plain text is ASCII in lines of 72 columns, whatever the labels; only the address may be longer', () => {
    fc.assert(
      fc.property(wild(), (label) => {
        const lines = asPlainText(labelled(label)).split('\n');
        expect(lines.join('')).toMatch(/^[ -~]*$/);
        for (const line of lines.slice(0, -1)) expect(line.length).toBeLessThanOrEqual(72);
        expect(lines.at(-1)).toBe('<https://example.org/examples/two-pads/?a=0.5&v=1>');
      }),
    );
  });

  test('labels make no mark, link or tag in Markdown', () => {
    const tags = (html: string) => html.match(/<[a-z][^>]*>/gi);
    const plain = tags(markdownToHtml(asMarkdown(labelled('Receiver'))).html);
    fc.assert(
      fc.property(wild(), (label) => {
        expect(tags(markdownToHtml(asMarkdown(labelled(`a${label}`))).html)).toEqual(plain);
      }),
    );
  });

  test('labels make no tag in BBCode', () => {
    const tags = (text: string) => text.match(/\[[^\]]*\]/g);
    const plain = tags(asBbcode(labelled('Receiver')));
    fc.assert(
      fc.property(wild(), (label) => {
        expect(tags(asBbcode(labelled(label)))).toEqual(plain);
      }),
    );
  });

  test('no format carries control characters or turns the direction of writing, but for a label kept apart', () => {
    fc.assert(
      fc.property(wild(), (label) => {
        const summary = labelled(label);
        for (const text of [
          asUnicodeText(summary),
          asMarkdown(summary),
          asBbcode(summary),
          asSentence('shown', summary),
        ])
          expect(text.replaceAll(/\u2068([^\u2068\u2069]*)\u2069/g, '$1')).not.toMatch(
            /(?![\n\u200c\u200d])[\p{Cc}\p{Cf}]/u,
          );
      }),
    );
  });
});

describe('a result copied as text', () => {
  const summary = summarise(inputOf());

  test('carries numbers, assumptions, verdict and address in plain ASCII', () => {
    expect(asPlainText(summary)).toBe(PLAIN);
  });

  test('says the same in Unicode with the true signs, one statement a line', () => {
    const unwrapped = PLAIN.replaceAll('\n  ', ' ');
    const ascii = asUnicodeText(summary)
      .replaceAll('\u2212', '-')
      .replaceAll('\u00b1', '+/-')
      .replaceAll('\u2019', "'")
      .replaceAll('\u03a9', 'ohm');
    expect(ascii).toBe(unwrapped);
    expect(asUnicodeText(summary)).toMatch(/^Power at the socket: 26\.8 dBm \u00b12\.5 dB/);
  });

  test('has its value in bold and the rest as a list in Markdown and BBCode', () => {
    const { html } = markdownToHtml(asMarkdown(summary));
    expect(html).toMatch(
      /^<p><strong>Power at the socket: 26\.8 dBm \u00b12\.5 dB \(k = 2, 95\.45 %\); 480 mW, 270 to 840<\/strong><\/p>\n<ul>/,
    );
    expect(html).toContain('<a href="https://example.org/examples/two-pads/?a=0.5&amp;v=1">');
    const bbcode = asBbcode(summary).split('\n');
    expect(bbcode.slice(0, 2)).toEqual([
      '[b]Power at the socket: 26.8 dBm \u00b12.5 dB (k = 2, 95.45 %); 480 mW, 270 to 840[/b]',
      '[list]',
    ]);
    expect(bbcode.slice(-2)).toEqual([
      '[*][url]https://example.org/examples/two-pads/?a=0.5&v=1[/url]',
      '[/list]',
    ]);
  });

  test('goes without an address where there is none to share', () => {
    const saved = labelled('a', { link: 'file:///home/somebody/site.html' });
    for (const text of [asPlainText(saved), asUnicodeText(saved), asMarkdown(saved), asBbcode(saved)])
      expect(text).not.toMatch(/file:|[<>]|\[url/);
    expect(asPlainText({ ...saved, link: undefined })).toBe(asPlainText(saved));
  });

  test('never parts a number from its unit at a line end', () => {
    expect(asPlainText(summary)).not.toMatch(/\d\n {2}(dB|dBm|mW|%)/);
  });

  test('keeps what it can of foreign letters in ASCII', () => {
    const text = asPlainText(labelled('D\u00e4mpfungsglied gro\u00df \u2013 \u03bcW, \u0416'));
    expect(text).toContain('Dampfungsglied gross - uW, ?');
  });
});

describe('a result as sentences', () => {
  const summary = summarise(inputOf());

  test('gives value, biggest part and verdict, shown or spoken', () => {
    expect(asSentence('shown', summary)).toMatch(
      /^Power at the socket: 26\.8\u00a0dBm \u00b12\.5\u00a0dB \(k\u00a0=\u00a02, 95\.45\u00a0%\); 480\u00a0mW, 270 to 840\. Biggest part: Receiver, 88\u00a0% of the variance\. Specification 25\.5 to 28\.5\u00a0dBm: can\u2019t tell/,
    );
    const spoken = asSentence('spoken', summary);
    expect(spoken).toMatch(
      /^Power at the socket: 26\.8 decibel-milliwatts plus or minus 2\.5 decibels \(coverage factor 2, coverage probability 95\.45 percent\); 480 milliwatts, 270 to 840\./,
    );
    expect(spoken).not.toMatch(/[\u00b1\u2212%=/]/);
  });

  test('gives other lines on request, each closed by one full stop', () => {
    expect(asSentence('shown', summary, ['made', 'assumes'])).toBe(
      `Assumed: steady carrier; 50 \u03a9; pads not hot. Worked out with ${SITE_NAME}, version 0.`,
    );
  });
});

describe('an address to share', () => {
  test('is left as it is where it is safe', () => {
    const safe = 'https://example.org/bench/#l=2&l1n=20-dB-pad&v=1';
    expect(shareableLink(safe)).toBe(safe);
  });

  test('has its harmful signs escaped', () => {
    expect(shareableLink("http://example.org/a(b)[c]'d'*!\u00e9")).toBe(
      'http://example.org/a%28b%29%5Bc%5D%27d%27%2a%21%C3%A9',
    );
  });

  test.each(['file:///a', 'javascript:alert(1)', '', 'https://', 'about:blank', ' https://example.org'])(
    '%s is none',
    (url) => {
      expect(shareableLink(url)).toBeUndefined();
    },
  );
});
