import { describe, expect, it } from 'vitest';
import { examples } from '../../src/examples/index.ts';
import { embedSlug, embedsOf } from '../../src/lessons/embeds.ts';
import { figuresIn } from '../../src/lessons/source/figures.ts';
import { figureSpecs } from './figures.ts';
import { lessonFiles } from './lesson-files.ts';

/** Addresses at which figures were given out for other pages, where they stay. */
const given =
  `band-rulers borrowed budget dc-heat envelope few-readings gauge-blocks in-line-meter joined-meter level-diagram level-line link-sum
  oscilloscope own-meter pads-in-a-row-angles pads-in-a-row-straight pads-into-a-meter peak-detector ratio-ruler reading-band
  shared-cause stated-limits trace tries two-means two-rules two-signals unit-tree verdict what-comes-back where-to-spend`.split(
    /\s+/,
  );

const lessons = lessonFiles();
const embeds = embedsOf(lessons);

describe('the figures for other pages', () => {
  it('are those of the lessons, all at the addresses that were given out', () => {
    expect(embeds.map(({ slug }) => slug).toSorted()).toEqual(given);
  });

  it('share no address with a worked example', () => {
    expect(examples.filter(({ slug }) => given.includes(slug))).toEqual([]);
  });

  it('come with a title, a lesson, and the place where they stand in it', () => {
    for (const { figure, lesson } of embeds) {
      expect(figure.step.length, lesson.id).toBeGreaterThan(3);
      expect(figure.place).toMatch(/^[a-z]+$/);
    }
    const { figure, lesson } = embeds.find(({ slug }) => slug === 'two-signals') ?? {};
    expect(figure?.place).toBe('two');
    expect(lesson?.id).toBe('decibels/levels-and-gains');
  });

  it('have one title each in the lesson that they are from', () => {
    const titles = embeds.map(({ figure, lesson }) => `${lesson.id} ${figure.step}`);
    expect(new Set(titles).size).toBe(titles.length);
  });
});

describe('a figure of a lesson', () => {
  it('has an address, whichever it is', () => {
    for (const tag of Object.keys(figureSpecs))
      expect(embedSlug({ tag, attributes: {} })).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('has two where it is laid out in two ways', () => {
    expect(embedSlug({ tag: 'RowFigure', attributes: { lay: 'angles' } })).toBe('pads-in-a-row-angles');
  });

  it.each(['OtherFigure', '__proto__', 'Figure'])('is refused as %s', (tag) =>
    expect(() => embedSlug({ tag, attributes: {} })).toThrow(RangeError),
  );

  it('is found with its step and its place', () => {
    const mdx =
      '<Step id="a" title="One"><BudgetFigure /></Step>\n{/* <BackFigure /> */}<Step id="b" title="Two">\n<LineFigure\n instance="two" /></Step>';
    expect(figuresIn(mdx)).toEqual([
      { tag: 'BudgetFigure', attributes: {}, step: 'One', place: 'figure' },
      { tag: 'LineFigure', attributes: { instance: 'two' }, step: 'Two', place: 'two' },
    ]);
  });

  it('is given once, from the first lesson that has it', () => {
    const [first, ...more] = embedsOf([
      { id: 1, body: '<Step id="a" title="One"><BudgetFigure /></Step>' },
      { id: 2, body: '<Step id="b" title="Two"><BudgetFigure /></Step>' },
      { id: 3 },
    ]);
    expect(first).toMatchObject({ slug: 'budget', lesson: { id: 1 }, figure: { step: 'One' } });
    expect(more).toEqual([]);
  });
});
