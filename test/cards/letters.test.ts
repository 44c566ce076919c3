import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outlineOf, widthOf } from '../../src/cards/face.ts';
import { type Letters, lettering } from '../../src/cards/letters.ts';
import { light } from '../../src/styles/tokens.ts';

const room = { width: 1000, height: 300, size: 40 };
const one = (of: Partial<Letters>): Letters => ({
  text: '27.0',
  x: 500,
  y: 200,
  anchor: 'start',
  weight: 'Regular',
  fill: light.ink,
  rank: 0,
  ...of,
});
const drawn = (markup: string): readonly string[] =>
  [...markup.matchAll(/class="letters" fill="[^"]*" d="([^"]*)"/g)].map(([, d]) => d ?? '');
const at = (text: string, x: number, y = 200) => outlineOf(text, { x, y, size: 40, weight: 'Regular' });

describe('letters of a figure on a card', () => {
  test('stand where the figure has them: from their place, about it, or up to it', () => {
    const width = widthOf('27.0', { size: 40, weight: 'Regular' });
    expect(drawn(lettering([one({})], room))).toEqual([at('27.0', 500)]);
    expect(drawn(lettering([one({ anchor: 'middle' })], room))).toEqual([at('27.0', 500 - width / 2)]);
    expect(drawn(lettering([one({ anchor: 'end' })], room))).toEqual([at('27.0', 500 - width)]);
  });

  test('are moved in where they would stand out at a side', () => {
    expect(drawn(lettering([one({ x: -20 })], room))).toEqual([at('27.0', 0)]);
  });

  test('are left out above or below the figure, and where there are none', () => {
    expect(lettering([one({ y: 10 }), one({ y: 340 }), one({ text: ' ' })], room)).toBe('');
  });

  test('make way for what is worth more, wherever that comes', () => {
    const markup = lettering([one({ rank: 2 }), one({ text: 'length, mm', rank: 1, x: 480 })], room);
    expect(drawn(markup)).toEqual([at('length, mm', 480)]);
  });

  test('have a rim of paper, so that no line runs through them', () => {
    expect(lettering([one({})], room)).toContain(`stroke="${light.paper}"`);
  });

  test('never stand in each other, however many there are', () => {
    const places = fc.array(
      fc.record({ x: fc.integer({ min: 0, max: 1000 }), y: fc.integer({ min: 40, max: 290 }) }),
      {
        maxLength: 30,
      },
    );
    fc.assert(
      fc.property(places, (them) => {
        const markup = lettering(them.map(one), room);
        const width = widthOf('27.0', { size: 40, weight: 'Regular' });
        const starts = drawn(markup).map((d) => {
          const place = them.find(({ x, y }) => d === at('27.0', Math.min(x, 1000 - width), y));
          return place ?? { x: Number.NaN, y: Number.NaN };
        });
        for (const [index, a] of starts.entries())
          for (const b of starts.slice(index + 1))
            expect(
              Math.abs(a.x - b.x) >= width ||
                Math.abs(a.y - b.y) >= 30 ||
                a.x + width > 1000 ||
                b.x + width > 1000,
            ).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});
