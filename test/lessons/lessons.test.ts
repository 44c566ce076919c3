import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { examples } from '../../src/examples/index.ts';
import { TRACKS } from '../../src/lessons/tracks.ts';
import { textOfValue, valueIds } from '../../src/lessons/values.ts';
import { wordIds, wordsIn } from '../../src/lessons/words.ts';
import { questionIds } from '../../src/questions/index.ts';
import { filesBelow } from '../rules/sources.ts';
import { type Attributes, figureSpecs } from './figures.ts';

const lessons = filesBelow('src/lessons', ['.mdx']).map(({ path, text }) => ({
  path,
  front: /^---[\s\S]*?\n---/.exec(text)?.[0] ?? '',
  body: text.replace(/^---[\s\S]*?\n---/, '').replace(/\{\/\*[\s\S]*?\*\/\}/g, ''),
}));

/** Steps by lesson that people have linked to (`#widening`, a slide of a talk): one is added and never taken away. */
const steps = JSON.parse(readFileSync(new URL('./steps.json', import.meta.url), 'utf8')) as Readonly<
  Record<string, readonly string[]>
>;

/** Every value of an attribute of a tag. */
const given = (body: string, tag: string, attribute: string): readonly string[] =>
  [...body.matchAll(new RegExp(`<${tag}\\b[^>]*?\\s${attribute}="([^"]*)"`, 'g'))].map(
    ([, value]) => value ?? '',
  );

/** The attributes of every use of a tag. */
const tagsOf = (body: string, tag: string): readonly Attributes[] =>
  [...body.matchAll(new RegExp(`<${tag}\\b((?:[^>"{]|"[^"]*"|\\{[^}]*\\})*)>`, 'g'))].map(([, inside = '']) =>
    Object.fromEntries([...inside.matchAll(/(\w+)="([^"]*)"/g)].map(([, name, value]) => [name, value])),
  );

const figuresOf = (body: string) =>
  Object.keys(figureSpecs).flatMap((tag) => tagsOf(body, tag).map((attributes) => ({ tag, attributes })));

/** What stands beside the steps and the parts for the page alone. */
function besides(body: string): string {
  const rest: string[] = [];
  let within: string | undefined;
  let depth = 0;
  for (const [piece] of body.matchAll(/<\/?(?:Step|More)\b[^>]*>|[^<]+|</g)) {
    const [, close, tag] = /^<(\/?)(Step|More)\b/.exec(piece) ?? [];
    if (tag === undefined) {
      if (within === undefined) rest.push(piece);
    } else if (within === undefined && close === '') {
      within = tag;
      depth = 1;
    } else if (tag === within) {
      depth += close === '' ? 1 : -1;
      if (depth === 0) within = undefined;
    } else if (within === undefined) rest.push(piece);
  }
  return rest.join('').trim();
}

describe('the search for what stands beside the steps', () => {
  it('finds it, and only it', () => {
    expect(besides('<Step id="a">\n\n<More>x</More> y\n\n</Step>\n\n<More>z <Value of="b" /></More>\n')).toBe(
      '',
    );
    expect(besides('<Step id="a">x</Step> left over <More>z</More>')).toBe('left over');
    expect(besides('</Step><Step id="a">x</Step>')).toBe('</Step>');
    expect(besides('<Caution>x</Caution>')).toBe('<Caution>x</Caution>');
  });
});

describe('lessons', () => {
  it('are all that were ever given out, each with its steps', () => {
    const found = lessons.map(({ path, body }) => [
      path.replace(/^src\/lessons\/|\.mdx$/g, ''),
      given(body, 'Step', 'id'),
    ]);
    expect(
      Object.fromEntries(found),
      'a new step goes into test/lessons/steps.json, where its lesson has it; none is taken out',
    ).toEqual(steps);
  });
});

describe.each(lessons)('$path', ({ path, front, body }) => {
  it('is made of steps and of parts for the page alone, so that the stage loses nothing', () => {
    expect(besides(body)).toBe('');
    expect((body.match(/<Step\b/g) ?? []).length).toBe((body.match(/<\/Step>/g) ?? []).length);
  });

  it('has steps with names of their own, and a guess in the first', () => {
    const ids = given(body, 'Step', 'id');
    expect(ids.length).toBeGreaterThan(2);
    expect(new Set(ids).size).toBe(ids.length);
    const [first = ''] = body.split('</Step>');
    expect(first).toContain('<GuessFirst ');
  });

  it('closes with a check, takeaways and sources', () => {
    const order = ['<CheckYourself ', '<Takeaways>', '<Sources>'].map((tag) => body.indexOf(tag));
    expect(order.every((at) => at > body.lastIndexOf('</Step>'))).toBe(true);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('shows values that there are, each with a text', () => {
    for (const id of given(body, 'Value', 'of')) expect(textOfValue(id).trim(), id).not.toBe('');
  });

  it('asks questions that there are, each once', () => {
    const ids = [...given(body, 'GuessFirst', 'id'), ...given(body, 'CheckYourself', 'id')];
    expect(ids.filter((id) => !questionIds().includes(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('offers states of its figures that open without a problem and show something else', () => {
    const figures = new Map(
      figuresOf(body).map(({ tag, attributes }) => [
        attributes.instance ?? 'figure',
        { instance: attributes.instance, spec: figureSpecs[tag]?.(attributes) },
      ]),
    );
    const offers = [...tagsOf(body, 'TryState'), ...tagsOf(body, 'Mistake')];
    for (const { state: address = '', at = 'figure' } of offers) {
      const { spec, instance } = figures.get(at) ?? {};
      if (spec === undefined) throw new Error(`${address}: wish a figure called ${at}`);
      const { state, problems, carried } = decode(spec, address, instance);
      expect({ address, problems, carried }).toEqual({ address, problems: [], carried: true });
      expect(state, address).not.toEqual(decode(spec, '').state);
    }
    const states = tagsOf(body, 'TryState').map(({ state }) => state);
    expect(new Set(states).size).toBe(states.length);
  });

  it('has figures with names of their own, one of them without', () => {
    const names = figuresOf(body).map(({ attributes }) => attributes.instance ?? 'figure');
    expect(names).toContain('figure');
    expect(new Set(names).size).toBe(names.length);
  });

  it('asks three questions at its end, and shows what the classic mistakes cost', () => {
    expect(tagsOf(body, 'CheckYourself').length).toBeGreaterThanOrEqual(3);
    const mistakes = tagsOf(body, 'Mistake');
    expect(mistakes.length).toBeGreaterThan(0);
    for (const { costs = '' } of mistakes) expect(textOfValue(costs).trim()).not.toBe('');
  });

  it('tags words that there are, each at its first use', () => {
    const tagged = tagsOf(body, 'Word').map(({ of = '' }) => of);
    expect(tagged.length).toBeGreaterThan(0);
    expect(tagged.filter((id) => !wordIds().includes(id))).toEqual([]);
    expect(tagged).toEqual([...wordsIn(body)]);
  });

  it('sends its reader to worked examples that there are', () => {
    const slugs = examples.map(({ slug }) => slug);
    const [, listed = ''] = /^examples: \[(.*)\]$/m.exec(front) ?? [];
    const named = listed.split(',').map((slug) => slug.trim());
    expect(named.filter((slug) => slug !== '' && !slugs.includes(slug))).toEqual([]);
  });

  it('belongs to the track whose folder it is in', () => {
    expect(Object.keys(TRACKS)).toContain(path.split('/')[2]);
  });
});

describe('values for lessons', () => {
  it('are all shown in one', () => {
    const shown = new Set(
      lessons.flatMap(({ body }) => [...given(body, 'Value', 'of'), ...given(body, 'Mistake', 'costs')]),
    );
    expect(valueIds().filter((id) => !shown.has(id))).toEqual([]);
  });

  it('are refused by a name that none has', () => {
    for (const id of ['chain.nothing', 'nobody.level', 'chain', '', '__proto__.level'])
      expect(() => textOfValue(id), id).toThrow(
        `textOfValue: no value has the id, got ${JSON.stringify(id)}`,
      );
  });
});
