import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { TRACKS } from '../../src/lessons/tracks.ts';
import { textOfValue, valueIds } from '../../src/lessons/values.ts';
import { questionIds } from '../../src/questions/index.ts';
import { PRESETS, presetSheet } from '../../src/widgets/reading-band/presets.ts';
import { bandSpec } from '../../src/widgets/reading-band/spec.ts';
import { filesBelow } from '../rules/sources.ts';

const lessons = filesBelow('src/lessons', ['.mdx']).map(({ path, text }) => ({
  path,
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
    expect(Object.fromEntries(found)).toEqual(steps);
  });
});

describe.each(lessons)('$path', ({ path, body }) => {
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

  it('shows prepared chains that there are', () => {
    const known: readonly string[] = PRESETS;
    expect(given(body, 'ChainFigure', 'preset').filter((preset) => !known.includes(preset))).toEqual([]);
  });

  it('offers states of its figure that open without a problem and show something else', () => {
    const states = given(body, 'TryState', 'state');
    const preset = PRESETS.find((name) => given(body, 'ChainFigure', 'preset').includes(name));
    if (preset === undefined) return expect(states).toEqual([]);
    const spec = bandSpec(presetSheet(preset), { showLimits: true, showCurve: false });
    const prepared = decode(spec, '').state;
    for (const address of states) {
      const { state, problems, carried } = decode(spec, address);
      expect({ address, problems, carried }).toEqual({ address, problems: [], carried: true });
      expect(state, address).not.toEqual(prepared);
    }
    expect(new Set(states).size).toBe(states.length);
  });

  it('belongs to the track whose folder it is in', () => {
    expect(Object.keys(TRACKS)).toContain(path.split('/')[2]);
  });
});

describe('values for lessons', () => {
  it('are all shown in one', () => {
    const shown = new Set(lessons.flatMap(({ body }) => given(body, 'Value', 'of')));
    expect(valueIds().filter((id) => !shown.has(id))).toEqual([]);
  });

  it('are refused by a name that none has', () => {
    for (const id of ['chain.nothing', 'nobody.level', 'chain', '', '__proto__.level'])
      expect(() => textOfValue(id), id).toThrow(
        `textOfValue: no value has the id, got ${JSON.stringify(id)}`,
      );
  });
});
