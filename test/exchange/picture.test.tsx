import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { standalonePicture } from '../../src/exchange/picture.ts';
import { styleRules } from '../../src/exchange/style-rules.ts';
import { ReadingBand } from '../../src/figures/ReadingBand.tsx';
import { dark, light } from '../../src/styles/tokens.ts';
import { namedStates } from '../figures/demonstration.ts';
import { anyText } from '../text/any-text.ts';

const css = readFileSync(new URL('../../src/styles/figures.css', import.meta.url), 'utf8');
const drawing = { markup: '<path d="M0 0h9"/>', width: 880, height: 200 };
const words = (text: string) => ({ title: text, result: text, above: [text, text], below: [text] });

/** Elements with their attributes, and whether they are closed in the right order: what makes an XML text well-formed here. */
function elementsOf(svg: string): readonly { name: string; attributes: Readonly<Record<string, string>> }[] {
  const open: string[] = [];
  const found: { name: string; attributes: Readonly<Record<string, string>> }[] = [];
  const rest = svg.replace(
    /<(\/?)([a-z]+)((?:\s[\w:-]+="[^"<]*")*)\s*(\/?)>/gi,
    (_, closing, name, list, empty) => {
      if (closing === '/') expect(open.pop()).toBe(name);
      else {
        const pairs = [...String(list).matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [
          key,
          value,
        ]);
        found.push({ name, attributes: Object.fromEntries(pairs) });
        if (empty !== '/') open.push(name);
      }
      return '';
    },
  );
  expect(open).toEqual([]);
  expect(rest).not.toMatch(/[<>]|&(?!(?:amp|lt|gt|quot);)/);
  return found;
}

describe('a picture that stands alone', () => {
  test('is well-formed and has the same elements but rows of words, whatever the words', () => {
    fc.assert(
      fc.property(anyText(200), (text) => {
        const { svg } = standalonePicture(words(text), drawing, light);
        const names = new Set(elementsOf(svg).map(({ name }) => name));
        expect(
          [...names].filter((name) => !['svg', 'title', 'rect', 'text', 'g', 'path'].includes(name)),
        ).toEqual([]);
      }),
    );
  });

  test('carries no script, link, style or class, so that every viewer and board takes it', () => {
    const { svg } = standalonePicture(words('<script>alert(1)</script> & "x" <a href="y">'), drawing, light);
    const elements = elementsOf(svg);
    expect(elements.filter(({ name }) => /^(script|a|style|image|use|foreignObject)$/.test(name))).toEqual(
      [],
    );
    const names = elements.flatMap(({ attributes }) => Object.keys(attributes));
    expect(names.filter((name) => /^(class|style|href|on.*)$/.test(name))).toEqual([]);
    expect(svg).toContain('&lt;script&gt;');
  });

  test('grows with its words, keeps its width, and keeps all rows inside', () => {
    const lengths = [20, 200, 900].map((length) =>
      standalonePicture(words('word '.repeat(length / 5).trim()), drawing, light),
    );
    expect(lengths.map(({ width }) => width)).toEqual([940, 940, 940]);
    const heights = lengths.map(({ height }) => height);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    for (const { svg, height } of lengths)
      for (const { name, attributes } of elementsOf(svg))
        if (name === 'text') expect(Number(attributes.y)).toBeLessThan(height);
  });

  test('breaks a word that is longer than a row, and loses none of it', () => {
    const long = 'x'.repeat(300);
    const { svg } = standalonePicture({ ...words(''), title: long }, drawing, light);
    const rows = [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, row]) => row ?? '');
    expect(rows.join('')).toBe(long);
    expect(Math.max(...rows.map((row) => row.length))).toBeLessThan(80);
  });

  test('parts no number from its unit', () => {
    const rows = [
      ...standalonePicture(words('the power was 27.10 dBm; '.repeat(30)), drawing, light).svg.matchAll(
        /<text[^>]*>([^<]*)</g,
      ),
    ];
    for (const [, row = ''] of rows) expect(row).not.toMatch(/\d$/);
  });

  test('has the drawing between the words above and those below it', () => {
    const { svg } = standalonePicture({ ...words('a'), below: ['foot'] }, drawing, light);
    expect(svg.indexOf(drawing.markup)).toBeGreaterThan(svg.indexOf('>a<'));
    expect(svg.indexOf(drawing.markup)).toBeLessThan(svg.indexOf('>foot<'));
  });
});

describe('the rules of a style sheet, for a picture', () => {
  const rules = styleRules(css, light);
  const of = (selector: string) =>
    Object.fromEntries(
      rules.filter((rule) => rule.selector === selector).flatMap(({ attributes }) => attributes),
    );

  test('carry colours instead of variables, and numbers without a unit', () => {
    expect(of('.band-strip')).toEqual({ fill: light.band });
    expect(of('.band-mark')).toEqual({ fill: 'none', stroke: light.ink, 'stroke-width': '2.5' });
    expect(of('.band-label')).toMatchObject({ 'font-size': '17', 'font-weight': '600' });
    for (const { attributes } of rules)
      for (const [, value] of attributes) expect(value).not.toMatch(/var\(|px|inherit/);
    expect(styleRules(css, dark).find(({ selector }) => selector === '.band-strip')?.attributes).toEqual([
      ['fill', dark.band],
    ]);
  });

  test('leave out print, other media and what only a pointer sees', () => {
    expect(rules.filter(({ selector }) => /hover|media/.test(selector))).toEqual([]);
    expect(
      rules.flatMap(({ attributes }) => attributes).filter(([, value]) => value === 'Highlight'),
    ).toEqual([]);
  });

  test('come in the order of their weight: the stronger, and of equals the later, last', () => {
    const place = (selector: string) => rules.findIndex((rule) => rule.selector === selector);
    expect(place('.band text')).toBeLessThan(place('.band text.band-detail'));
    expect(place('.band-number')).toBeLessThan(place('.band g:last-of-type > .band-number'));
    expect(place('.band-tick')).toBeLessThan(place('.band-narrow .band-tick'));
    expect(place('.band-mark')).toBeLessThan(place('.band-open'));
    const own = styleRules('.a .b { fill: red } .c { fill: blue; margin: 0 } .d { margin: 0 }', light);
    expect(own.map(({ selector }) => selector)).toEqual(['.c', '.a .b']);
  });

  test('are parted at commas, but not at those within brackets', () => {
    const own = styleRules('.a :is(.b, .c), .d { fill: red }', light);
    expect(own.map(({ selector }) => selector).toSorted()).toEqual(['.a :is(.b, .c)', '.d']);
  });

  test('speak of every class that the figure draws with, frames and anchors apart', () => {
    const markup = ['club', 'curve on', 'specification lines', 'ghost'].flatMap((state) => {
      const props = namedStates[state]?.();
      return props === undefined ? [] : [render(<ReadingBand {...props} name="n" description="d" />)];
    });
    expect(markup).toHaveLength(4);
    const classes = new Set(
      [...markup.join('').matchAll(/class="([^"]*)"/g)].flatMap(([, list]) => (list ?? '').split(' ')),
    );
    const spoken = rules.map(({ selector }) => selector).join(' ');
    const silent = [...classes].filter((name) => !spoken.includes(`.${name}`));
    expect(
      silent.filter((name) => !/^(band-(wide|axes|rail|handle|dot|hold|edge|face)|anchor-start)$/.test(name)),
    ).toEqual([]);
  });
});
