import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { specFaults } from '../../src/address/spec-faults.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { exampleTexts } from '../../src/examples/copy.ts';
import type { ChainExample, SumExample } from '../../src/examples/example.ts';
import { exampleAt, examples } from '../../src/examples/index.ts';
import { moved } from '../../src/examples/moved.ts';
import { outcomeName } from '../../src/examples/outcome-name.ts';
import { bandRows } from '../../src/widgets/parts/band-rows.ts';
import { bandSpec } from '../../src/widgets/reading-band/spec.ts';
import { benchResult } from '../bench-app/bench-result.ts';
import { filesBelow } from '../rules/sources.ts';

/** Addresses that people have linked to: a slug is added and never taken away. */
const slugs = readFileSync(new URL('./slugs.txt', import.meta.url), 'utf8')
  .trim()
  .split('\n');
/** Anchors of steps that people have linked to, `slug#step` a line: likewise. */
const anchors = readFileSync(new URL('./anchors.txt', import.meta.url), 'utf8')
  .trim()
  .split('\n');

const chains = examples.filter((example): example is ChainExample => example.kind === 'chain');
const sums = examples.filter((example): example is SumExample => example.kind === 'sum');
/** A usual host of a club's pages, as long as they come. */
const USUAL = 'https://radio-club.example.org/examples/';

describe('the list of examples', () => {
  it('has every slug that was ever given out, as an example or as a page that leads on, and no other', () => {
    const own = [...examples.map(({ slug }) => slug), ...moved.map(({ from }) => from)];
    expect(own.sort(), 'a new slug goes into test/examples/slugs.txt; one that moves, into moved.ts').toEqual(
      [...slugs].sort(),
    );
    for (const { to } of moved) expect(exampleAt(to).slug).toBe(to);
  });

  it('refuses a slug that there is not', () => {
    expect(() => exampleAt('nowhere')).toThrow(RangeError);
  });

  it('has every anchor of a step that was ever given out, and no other', () => {
    const own = examples.flatMap(({ slug, steps }) => steps().map(({ id }) => `${slug}#step-${id}`));
    expect(own.sort(), 'a new step goes into test/examples/anchors.txt, and stays there').toEqual(
      [...anchors].sort(),
    );
    expect(new Set(own).size).toBe(own.length);
  });

  it('has slugs that are words of small letters, and titles that all differ', () => {
    for (const { slug } of examples) expect(slug).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(new Set(examples.map(({ title }) => title)).size).toBe(examples.length);
  });

  it('has addresses that a mail does not break', () => {
    for (const { slug } of examples) expect(`${USUAL}${slug}/`.length, slug).toBeLessThanOrEqual(70);
  });
});

describe.each(examples)('$slug', (example) => {
  it('says what is known, the sum and what is assumed, and warns', () => {
    expect(example.known().length).toBeGreaterThanOrEqual(2);
    expect(example.steps().length).toBeGreaterThanOrEqual(2);
    expect(example.assumptions.length).toBeGreaterThanOrEqual(1);
    expect(example.cautions.length).toBeGreaterThanOrEqual(1);
    expect(example.mistake()).toMatch(/\d/);
  });

  it('gives a unit or a ratio in every formula, and no trace of a number that is none', () => {
    for (const { title, formula } of example.steps()) {
      const text = formula('shown');
      expect(text, title).toMatch(/\d/);
      expect(text, title).not.toMatch(/NaN|undefined|Infinity|\u221e/);
    }
  });

  it('writes formulas in ASCII alone where a board takes no more', () => {
    for (const { title, formula } of example.steps()) expect(formula('ascii'), title).toMatch(/^[ -~]+$/);
    for (const { what, value } of example.known()) expect(value('ascii'), what).toMatch(/^[ -~]+$/);
  });

  it('says its formulas without a sign that is not spoken', () => {
    for (const { title, formula } of example.steps())
      expect(formula('spoken'), title).not.toMatch(/[²√×−Γ]/u);
  });

  it('leads to a lesson that there is', () => {
    const lessons = filesBelow('src/lessons', ['.mdx']).map(({ path }) => path);
    expect(lessons).toContain(`src/lessons/${example.lesson}.mdx`);
  });
});

describe.each(chains)('$slug, a chain', (example) => {
  const sheet = example.sheet();
  const shown = benchResult(sheet);
  const { result } = shown.chain;

  it('can be drawn and linked to: two letters tell its rungs apart', () => {
    expect(specFaults(bandSpec(sheet, { showLimits: true, showCurve: false }))).toEqual([]);
  });

  it('adds up as it is written, where the middle is not what was read', () => {
    const middle = example.steps().find(({ id }) => id === 'middle');
    if (middle === undefined) return;
    const [, bare = '', sign = '', shift = '', estimate = ''] =
      /^(\S+) dBm ([-+]) (\S+) dB = (\S+) dBm$/.exec(middle.formula('ascii')) ?? [];
    const places = estimate.split('.')[1]?.length ?? 0;
    expect((Number(bare) + Number(`${sign}${shift}`)).toFixed(places)).toBe(estimate);
  });

  it('is known better once it is better known', () => {
    const better = benchResult(example.better.sheet());
    expect(better.chain.result.propagation.expanded).toBeLessThan(result.propagation.expanded);
    expect(better.chain.sheet.readings).toEqual(sheet.readings);
  });

  it('opens on the bench with the same result, as far as the method has no more to say', () => {
    const measurement = example.bench?.();
    if (measurement === undefined) throw new Error('a chain must open on the bench');
    const opened = pointResult(measurement, measurement.points[0]?.id ?? '');
    if (!opened.inRange) throw new Error(`in range, got ${opened.reason.code}`);
    const { estimate, propagation } = opened.result.chain.result;
    expect(Math.abs(estimate - result.estimate)).toBeLessThan(0.02);
    expect(propagation.expanded / result.propagation.expanded).toBeCloseTo(1, 1);
  });
});

describe.each(sums.filter(({ bench }) => bench !== undefined))('$slug, on the bench', ({ bench }) => {
  it('has a rung for each part, also where one is taken as exact', () => {
    const measurement = bench?.();
    if (measurement === undefined) throw new Error('wish a measurement');
    const opened = pointResult(measurement, measurement.points[0]?.id ?? '');
    if (!opened.inRange) return; // then it says why, and draws nothing
    const { chain } = opened.result;
    const rows = bandRows({ chain, showLimits: true, showCurve: false, handles: true });
    for (const [index, { cumulative }] of chain.rungs.entries())
      expect(rows[index + 1]?.detail).toMatch(
        cumulative.propagation.standardUncertainty > 0 ? /\d/ : /^adds /,
      );
  });
});

describe.each(sums)('$slug, a sum', (example) => {
  it('answers, says what decides and what would help', () => {
    expect(example.outcomes().length).toBeGreaterThanOrEqual(1);
    for (const { name, value } of example.outcomes()) expect(value('shown'), name).toMatch(/\d/);
    expect(example.dominates('shown')).not.toBe('');
    expect(example.help()).not.toBe('');
  });

  it('says of every outcome in what it is made, or of all at once', () => {
    const own = example.outcomes().filter(({ space }) => space !== undefined);
    expect(own).toHaveLength(example.space === 'each' ? example.outcomes().length : 0);
    const [text] = exampleTexts(example, { link: 'https://site.invalid/', version: '1.2.3' });
    for (const outcome of own) expect(text?.text.replaceAll(/\s+/g, ' ')).toContain(outcomeName(outcome));
  });

  it('has no part whose name is missing', () => {
    for (const { stated } of example.outcomes())
      for (const { id } of stated?.result.propagation.budget ?? [])
        expect(Object.keys(stated?.labels ?? {})).toContain(id);
  });
});
