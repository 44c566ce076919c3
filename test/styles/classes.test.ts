import { expect, test } from 'vitest';
import { code, filesBelow } from '../rules/sources.ts';

/** Classes that the rules of a sheet speak of. */
const classesIn = (css: string): readonly string[] =>
  [...css.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/\.([a-zA-Z][\w-]*)(?=[^{}]*\{)/g)].map(
    ([, name = '']) => name,
  );

/** Tells whether markup may have a class: by its name, or by a beginning that a code completes (`plot-${frame}`). */
function givenIn(sources: string): (name: string) => boolean {
  const names = new Set(sources.match(/[\w-]+/g));
  const beginnings = new Set([...sources.matchAll(/([\w-]+-)\$\{/g)].map(([, beginning]) => beginning));
  return (name) =>
    names.has(name) || [...name.matchAll(/-/g)].some(({ index }) => beginnings.has(name.slice(0, index + 1)));
}

test('a class is given by its name or by its beginning', () => {
  const classes = classesIn('.answers > dt, .plot-wide { a: b } /* .gone {} */ .old-words { c: 0.5s }');
  expect(classes).toEqual(['answers', 'plot-wide', 'old-words']);
  const isGiven = givenIn(['class="answers" class={`plot plot-$', '{frame}`}'].join(''));
  expect([...classes, 'answer'].filter(isGiven)).toEqual(['answers', 'plot-wide']);
});

test('the colour of the band is spoken of by the sheet of figures alone', () => {
  const files = filesBelow('src', [...code, '.css']).filter(({ text }) => text.includes('var(--band)'));
  expect(files.map(({ path }) => path)).toEqual(['src/styles/figures.css']);
});

test('no sheet has a rule for a class that no markup has', () => {
  const texts = filesBelow('src', [...code, '.mdx']).map(({ text }) => text);
  const isGiven = givenIn(texts.join('\n'));
  const dead = filesBelow('src/styles', ['.css']).flatMap(({ path, text }) =>
    classesIn(text)
      .filter((name) => !isGiven(name))
      .map((name) => `${path}: ${name}`),
  );
  expect(dead).toEqual([]);
});
