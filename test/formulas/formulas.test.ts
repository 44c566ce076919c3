import katex from 'katex';
import { describe, expect, it } from 'vitest';
import * as compute from '#compute';
import { type ComputeFunction, formulaOf, rowsOf, TOPICS, type TopicId } from '../../src/formulas/index.ts';
import { SOURCES } from '../../src/formulas/sources.ts';
import { EXEMPT, WITHOUT_LETTER } from './exempt.ts';

const topics = Object.keys(TOPICS) as TopicId[];
const rows = topics.flatMap((topic) => rowsOf(topic));
const named = rows.map((row) => [row.id, row] as const);
const publicFunctions = new Map(
  Object.entries(compute).filter(([, value]) => typeof value === 'function') as [ComputeFunction, unknown][],
);
const functions = [...publicFunctions.keys()];
const bare = (tex: string) => tex.replaceAll(/\s|\\,|\\;/g, '');

/** Names of a function's parameters; none for one destructured object, whose names TypeScript checks. */
function parameterNames(name: ComputeFunction): string[] {
  const text = String(publicFunctions.get(name));
  const list = text.slice(text.indexOf('(') + 1);
  if (list.startsWith('{') || list.startsWith(')')) return [];
  return list
    .slice(0, list.indexOf(')'))
    .replaceAll(/\{[^}]*\}/g, '')
    .split(',')
    .map((parameter) => parameter.trim())
    .filter((parameter) => parameter !== '');
}

describe('the formula sheet', () => {
  it('has a row for every public function that is a formula, and a reason for every other', () => {
    const ids = new Set<ComputeFunction>(rows.map(({ id }) => id));
    expect(functions.filter((name) => !ids.has(name) && EXEMPT[name] === undefined)).toEqual([]);
  });

  it('has no row for a function that is not public, none twice, and none that is exempt', () => {
    const ids = rows.map(({ id }) => id);
    expect(ids.filter((id) => !functions.includes(id))).toEqual([]);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    expect(ids.filter((id) => EXEMPT[id] !== undefined)).toEqual([]);
  });

  it('exempts no function that does not exist', () => {
    expect(Object.keys(EXEMPT).filter((name) => !functions.includes(name as ComputeFunction))).toEqual([]);
  });

  it('finds a row by its name, and says so where there is none', () => {
    expect(formulaOf('levelToPower').tex).toBe(TOPICS.levels.levelToPower.tex);
    expect(() => formulaOf('finite')).toThrow(
      new RangeError('formulaOf: id must be that of a row, got finite'),
    );
  });
});

describe.each(named)('the row of %s', (id, row) => {
  it('is drawn by KaTeX without a complaint, its letters too', () => {
    const strict = { throwOnError: true, strict: 'error', output: 'htmlAndMathml' } as const;
    expect(katex.renderToString(row.tex, { ...strict, displayMode: true })).toContain('<math');
    for (const { tex } of Object.values(row.symbols))
      expect(katex.renderToString(tex, strict)).toContain('<math');
  });

  it('explains only letters that stand in it', () => {
    const missing = Object.values(row.symbols).filter(({ tex }) => !bare(row.tex).includes(bare(tex)));
    expect(missing).toEqual([]);
  });

  it('says in a sentence what it answers, and where it is from', () => {
    expect(row.words).toMatch(/^[A-Z].*[^.]\.$/);
    expect(row.sources.length).toBeGreaterThan(0);
    for (const { of } of row.sources) expect(SOURCES).toHaveProperty(of);
  });

  it('has a letter for every number that the function takes, under its name', () => {
    const written = parameterNames(id).filter((name) => WITHOUT_LETTER[name] === undefined);
    expect(written.filter((name) => row.symbols[name] === undefined)).toEqual([]);
  });

  it('has an example of its own letters that comes to a number', () => {
    const letters = Object.keys(row.symbols);
    expect(Object.keys(row.example.given).filter((name) => !letters.includes(name))).toEqual([]);
    expect(row.example.result()).toSatisfy(Number.isFinite);
  });
});
