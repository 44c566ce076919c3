import { createHash } from 'node:crypto';
import sharp from 'sharp';
import { describe, expect, test, vi } from 'vitest';
import { TICK_SIZE } from '../../src/cards/band.tsx';
import { cardOf } from '../../src/cards/card.ts';
import { CARD_HEIGHT, CARD_WIDTH, cardSvg, MARGIN } from '../../src/cards/card-svg.ts';
import { atAGlance, exampleCard } from '../../src/cards/example-card.ts';
import { lessonCard } from '../../src/cards/lesson-card.ts';
import { siteCard } from '../../src/cards/site-card.ts';
import { examples } from '../../src/examples/index.ts';
import { light } from '../../src/styles/tokens.ts';
import { cardedLessons } from './lessons.ts';

const contents = [siteCard(), ...examples.map(exampleCard), ...cardedLessons.map(lessonCard)];
const named = contents.map((content) => ({ key: content.key, content, svg: cardSvg(content) }));
/** Least size of what must be read, seen at 300 pixels across, and of the result. */
const SMALL = 300;
const LEGIBLE_PX = 11;
const RESULT_PX = 20;
const seen = (size: number): number => (size * SMALL) / CARD_WIDTH;

/** Ends of all that a path draws, from its absolute coordinates. */
function boundsOf(path: string) {
  const numbers = [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(([number]) => Number(number));
  const [xs, ys] = [0, 1].map((odd) => numbers.filter((_, index) => index % 2 === odd));
  return {
    left: Math.min(...(xs ?? [])),
    right: Math.max(...(xs ?? [])),
    top: Math.min(...(ys ?? [])),
    bottom: Math.max(...(ys ?? [])),
  };
}

/** The rows of words, in their order: site, title, result, what it is. */
const rowsOf = (svg: string) =>
  [...svg.matchAll(/<path fill="(#[0-9a-f]{6})" d="(M[^"]*)"/g)]
    .filter(([, , path]) => !/[hvHV]/.test(path ?? ''))
    .map(([, fill, path]) => ({ fill, ...boundsOf(path ?? '') }));

test('every card has a key of its own, and its result among what is said to those who do not see it', () => {
  expect(new Set(contents.map(({ key }) => key)).size).toBe(contents.length);
  for (const { key, big, title, alt } of contents) {
    expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(alt).toContain(big);
    if (key !== 'site') expect(alt).toContain(title);
  }
});

test('every number of a lesson’s card comes from its prose’s values', () => {
  for (const { card } of cardedLessons)
    if ('says' in card) expect(card.says.replace(/\{[\w.]+\}/g, ''), card.says).not.toMatch(/\d/);
  expect(() =>
    lessonCard({
      id: 'a/b',
      title: 'x',
      card: { value: 'chain.level', figure: 'ScopeFigure', says: '{no.such}' },
    }),
  ).toThrow(RangeError);
  expect(cardedLessons.filter(({ card }) => 'band' in card).map(({ id }) => id)).toEqual([
    'traceability/the-chain-to-the-definition',
  ]);
});

describe('what of an outcome stands large', () => {
  test('is its value where that is short, and else the head of the sentence or the name', () => {
    expect(atAGlance('Loss', '10.0 dB ±0.1 dB')).toEqual({ big: '10.0 dB ±0.1 dB', small: 'Loss' });
    expect(atAGlance('No number', 'Out of range: the frequency is too high for it: by half.')).toEqual({
      big: 'Out of range',
      small: 'No number: the frequency is too high for it: by half',
    });
    expect(atAGlance('Keyed', '0.88 W of 2.0 W PEP, −3.57 dB')).toEqual({
      big: '0.88 W of 2.0 W PEP',
      small: 'Keyed, −3.57 dB',
    });
    const value = 'a long sentence that has no head to be shown by itself';
    expect(atAGlance('No number', value)).toEqual({ big: 'No number', small: value });
  });

  test('is computed, whatever the example: its number is that of the page', () => {
    for (const example of examples) {
      const { big, small } = exampleCard(example);
      expect(`${big} ${small}`, example.slug).toMatch(/\d/);
      if (example.kind === 'sum') {
        const [first] = example.outcomes();
        const shown = (first?.value('shown') ?? 'none').replace(/\.$/, '').split(/: |, /).at(-1) ?? 'none';
        expect(`${big} ${small}`).toContain(shown);
      }
    }
  });
});

describe.each(named)('the card $key', ({ content, svg }) => {
  const rows = rowsOf(svg);

  test('needs no face, no script and nothing from elsewhere', () => {
    expect(svg).not.toMatch(/<text|<image|<use|href|font|url\((?!#)|var\(/);
  });

  test('keeps all words within its margins, each row below the one before', () => {
    expect(rows.length).toBeGreaterThanOrEqual(4);
    for (const { left, right, top, bottom } of rows) {
      expect(left).toBeGreaterThan(MARGIN - 8);
      expect(right).toBeLessThan(CARD_WIDTH - MARGIN + 8);
      expect(top).toBeGreaterThan(30);
      expect(bottom).toBeLessThan(CARD_HEIGHT - 30);
    }
    const tops = rows.map(({ top }) => top);
    expect(tops).toEqual(tops.toSorted((a, b) => a - b));
  });

  test('is drawn in the colours of the page, and that of the band marks bands alone', () => {
    expect(new Set(rows.map(({ fill }) => fill))).toEqual(new Set([light.muted, light.ink]));
    if (content.drawn.kind === 'band') expect(svg).toContain(light.band);
    const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map(([, colour = '']) => colour);
    for (const colour of new Set(colours))
      expect([...Object.values(light), 'none', 'transparent']).toContain(
        colour.replace(/^url\(#.*\)$/, 'none'),
      );
  });
});

test('at 300 pixels across the result is 20 pixels high or more, its words and the numbers of a band’s axis 11', () => {
  for (const { content, svg } of named) {
    // a digit or a capital is two thirds of the size; the tallest row of all is that of the result
    const tallest = Math.max(...rowsOf(svg).map(({ top, bottom }) => bottom - top));
    expect(seen(tallest / 0.66), content.key).toBeGreaterThanOrEqual(RESULT_PX);
  }
  expect(seen(TICK_SIZE)).toBeGreaterThanOrEqual(LEGIBLE_PX);
});

test('a text that does not fit is refused and not made smaller than can be read', () => {
  const content = { ...siteCard(), big: '27.10 dBm ±0.69 dB, and a whole sentence beside it' };
  expect(() => cardSvg(content)).toThrow(RangeError);
  expect(() => cardSvg({ ...siteCard(), title: 'word '.repeat(40) })).toThrow(/fit/);
});

test('a character that the face lacks is refused and not drawn as an empty box', () => {
  expect(() => cardSvg({ ...siteCard(), title: '瓦' })).toThrow(/character/);
});

test('a band grows down its rungs on the card as it does on the page', () => {
  const svg = cardSvg(exampleCard(examples[0] ?? never()));
  const widths = [...svg.matchAll(/<polygon class="band-strip" points="([\d.]+) [\d.]+ ([\d.]+)/g)].map(
    ([, left, right]) => Number(right) - Number(left),
  );
  expect(widths.length).toBeGreaterThanOrEqual(3);
  expect(widths).toEqual(widths.toSorted((a, b) => a - b));
});

function never(): never {
  throw new RangeError('an example is needed, got none');
}

describe('a card as a file', () => {
  const content = exampleCard(examples[0] ?? never());

  test('is a PNG of 1200 by 630, whose name carries the hash of its bytes', async () => {
    const { name, png } = await cardOf(content);
    const { format, width, height } = await sharp(png).metadata();
    expect({ format, width, height }).toEqual({ format: 'png', width: 1200, height: 630 });
    const hash = createHash('sha256').update(png).digest('hex');
    expect(name).toBe(`${content.key}.${hash.slice(0, 10)}.png`);
  });

  test('has the same bytes when it is drawn again from nothing', async () => {
    const first = await cardOf(content);
    expect(await cardOf(content)).toBe(first);
    vi.resetModules();
    const again = await import('../../src/cards/card.ts');
    const second = await again.cardOf(content);
    expect(second).not.toBe(first);
    expect(Buffer.from(second.png).equals(Buffer.from(first.png))).toBe(true);
  });

  test('has another address as soon as another thing is on it', async () => {
    const other = await cardOf({ ...content, big: '26.9 dBm ±2.5 dB' });
    expect(other.name).not.toBe((await cardOf(content)).name);
  });
});
