import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { CARD_WIDTH, cardSvg, MARGIN } from '../../src/cards/card-svg.ts';
import { exampleCard } from '../../src/cards/example-card.ts';
import { exampleFigure } from '../../src/cards/example-figure.ts';
import { FIGURE_SIZE, figureDrawing } from '../../src/cards/figure-drawing.ts';
import { figureFor } from '../../src/cards/figure-for.ts';
import { FIGURE_NAMES } from '../../src/cards/figure-names.ts';
import { lessonCard } from '../../src/cards/lesson-card.ts';
import { siteCard } from '../../src/cards/site-card.ts';
import { examples } from '../../src/examples/index.ts';
import { figuresIn } from '../../src/lessons/source/figures.ts';
import { light } from '../../src/styles/tokens.ts';
import { lessonFiles } from '../lessons/lesson-files.ts';
import { cardedLessons } from './lessons.ts';

const contents = [siteCard(), ...examples.map(exampleCard), ...cardedLessons.map(lessonCard)];
const svgs = new Map(contents.map((content) => [content, cardSvg(content)]));
const withFigure = contents.filter(({ drawn }) => drawn.kind === 'figure');
/** Least size of letters in a figure, seen at 300 pixels across. */
const LEGIBLE_PX = 9;
const SMALL = 300;
/** Below a drawing: a cut to two to one takes 15 of it. */
const FOOT = 28;

describe('the figure on a card', () => {
  test('is there for every lesson and every example: a chain has its band, all others a figure of their page', () => {
    expect(withFigure).toHaveLength(
      contents.length - contents.filter(({ drawn }) => drawn.kind === 'band').length,
    );
    for (const example of examples)
      expect(exampleCard(example).drawn.kind, example.slug).toBe(
        example.kind === 'chain' ? 'band' : 'figure',
      );
    const banded = cardedLessons.filter((lesson) => lessonCard(lesson).drawn.kind === 'band');
    expect(banded.map(({ id }) => id)).toEqual(['traceability/the-chain-to-the-definition']);
  });

  test('of a lesson is one that the lesson shows', () => {
    const bodies = new Map(lessonFiles().map(({ id, body }) => [id, body]));
    for (const { id, card } of cardedLessons) {
      if (!('figure' in card)) continue;
      const shown = figuresIn(bodies.get(id) ?? '').map(({ tag, attributes: { lay } }) =>
        typeof lay === 'string' ? `${tag} ${lay}` : tag,
      );
      expect(shown, id).toContain(card.figure);
    }
  });

  test('is refused where there is none, or where its state is not one of it', () => {
    const lesson = { id: 'a/b', title: 'x' };
    const card = { value: 'chain.level', says: 'of which something is said' };
    expect(() => lessonCard({ ...lesson, card: { ...card, figure: 'NoSuchFigure' } })).toThrow(RangeError);
    expect(() => exampleFigure('no-such-example')).toThrow(RangeError);
    expect(() => exampleFigure('toString')).toThrow(RangeError);
    expect(() => figureFor({ kind: 'figure', name: 'RulesFigure', given: 'le=far&v=1' })).toThrow(RangeError);
  });

  test('changes with the state that it is given', () => {
    const drawn = (given?: string) =>
      figureDrawing(
        figureFor({ kind: 'figure', name: 'RulesFigure', ...(given !== undefined && { given }) }),
      );
    expect(drawn('le=1500&v=1').markup).not.toBe(drawn().markup);
  });

  test.each(FIGURE_NAMES)('%s has shapes, and its letters as outlines', (name) => {
    const { markup, width, height } = figureDrawing(figureFor({ kind: 'figure', name }));
    expect(width).toBe(CARD_WIDTH - 2 * MARGIN);
    expect(height).toBeGreaterThan(150);
    expect(markup).not.toMatch(/<text|<tspan|class="(?!letters")|data-|<title|<desc|NaN|undefined/);
    expect(markup.match(/class="letters"/g)?.length ?? 0).toBeGreaterThanOrEqual(3);
    expect(markup).toMatch(/<(?:path|rect)[^>]* stroke="#/);
  });
});

describe('on the cards', () => {
  test('letters of a figure are legible at 300 pixels across', () => {
    for (const content of withFigure) {
      const [, scale = '0'] =
        /class="figure" transform="scale\(([\d.]+)\)"/.exec(svgs.get(content) ?? '') ?? [];
      const seen = (Number(scale) * FIGURE_SIZE * SMALL) / CARD_WIDTH;
      expect(seen, content.key).toBeGreaterThanOrEqual(LEGIBLE_PX);
    }
  });

  test('nothing lies outside the safe area', async () => {
    for (const content of contents) expect(await marked(svgs.get(content) ?? ''), content.key).toEqual([]);
  });
});

/** Places at the margins of a card, at a quarter of its size, that are not paper. */
async function marked(svg: string): Promise<readonly string[]> {
  const small = svg.replace(/width="1200" height="630"/, `width="${SMALL}" height="158"`);
  const { data, info } = await sharp(Buffer.from(small))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const paper = [1, 3, 5].map((at) => Number.parseInt(light.paper.slice(at, at + 2), 16));
  const [side, foot] = [
    Math.floor(((MARGIN - 12) * SMALL) / CARD_WIDTH),
    Math.floor(((FOOT - 10) * SMALL) / CARD_WIDTH),
  ];
  const places: string[] = [];
  for (let y = 0; y < info.height; y++)
    for (let x = 0; x < info.width; x++) {
      const inside = x >= side && x < info.width - side && y >= side / 2 && y < info.height - foot;
      const at = (y * info.width + x) * info.channels;
      if (!inside && paper.some((value, index) => Math.abs((data[at + index] ?? 0) - value) > 8))
        places.push(`${x} ${y}`);
    }
  return places;
}
