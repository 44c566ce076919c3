import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { explanationOf, type Mutant } from './mutant.ts';
import { survivors } from './survivors.ts';

const source = (file: string): string => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');

test('every survivor that is explained stands once in the sources', () => {
  const lost = survivors.filter(({ file, within }) => source(file).split(within).length !== 2);
  expect(lost.map(({ file, within }) => `${file}: ${within}`)).toEqual([]);
});

test('every explanation names what is put there and says why in a sentence', () => {
  const poor = survivors.filter(({ to, reason }) => to.length === 0 || !/^[A-Z0-9`'−].{20,}\.$/.test(reason));
  expect(poor).toEqual([]);
});

test('an explanation covers its mutant wherever the line moves, and no other', () => {
  const text = 'const first = 1;\nconst half = whole / 2;\n';
  const entry = {
    file: 'a.ts',
    within: 'half = whole / 2',
    to: ['whole * 2'],
    reason: 'Only a first guess.',
  };
  const mutant: Mutant = {
    id: 0,
    file: 'a.ts',
    mutatorName: 'ArithmeticOperator',
    replacement: 'whole *\n  2',
    location: { start: { line: 1, column: 13 }, end: { line: 1, column: 22 } },
  };
  expect(explanationOf(mutant, text, [entry])).toBe(entry);
  expect(explanationOf(mutant, `\n${text}`, [entry])).toBeUndefined();
  expect(explanationOf({ ...mutant, replacement: 'whole - 2' }, text, [entry])).toBeUndefined();
  expect(explanationOf({ ...mutant, file: 'b.ts' }, text, [entry])).toBeUndefined();
});
