import { expect, test } from 'vitest';
import { code, filesBelow, isContent, type SourceFile } from './sources.ts';

const sources = filesBelow('src', code);
const longerThan = (most: number, files: readonly SourceFile[]): readonly string[] =>
  files.filter(({ lines }) => lines > most).map(({ path, lines }) => `${path}: ${lines}`);
/** Lines that do or check something: blank ones and comments aside, which may be as long as they need. */
const working = (files: readonly SourceFile[]): number =>
  files.reduce(
    (sum, { text }) =>
      sum +
      text
        .replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '')
        .split('\n')
        .filter((line) => line.trim() !== '').length,
    0,
  );

test('no source file is longer than 200 lines, words and tables aside', () => {
  // rows of formulas hold sums of their own, and a topic can be parted
  const counted = sources.filter((file) => !isContent(file) || file.path.startsWith('src/formulas/'));
  expect(longerThan(200, counted)).toEqual([]);
});

test('no view is longer than 120 lines', () => {
  const views = sources.filter(({ path }) => path.endsWith('.tsx') && !path.startsWith('src/figures/'));
  expect(longerThan(120, views)).toEqual([]);
});

test('no lesson is longer than 250 lines', () => {
  expect(longerThan(250, filesBelow('src/lessons', ['.mdx']))).toEqual([]);
});

test('no style sheet is longer than 200 lines', () => {
  expect(longerThan(200, filesBelow('src/styles', ['.css']))).toEqual([]);
});

test('half of the source files have at most 60 lines', () => {
  const sorted = sources.map(({ lines }) => lines).sort((a, b) => a - b);
  expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(60);
});

/** Everything that holds the computation to something: its own tests, goldens, second opinions, and the published entries. */
const PROOF = ['test/compute', 'test/published', 'test/golden', 'test/oracle', 'src/checks'];

test('what proves the computation is at least twice as long as the computation', () => {
  const proof = PROOF.flatMap((folder) => filesBelow(folder, ['.ts']));
  expect(working(proof)).toBeGreaterThanOrEqual(2 * working(filesBelow('src/compute', ['.ts'])));
});

test('the tests as a whole are at least as long as the source, words and tables aside', () => {
  const tests = filesBelow('test', ['.ts', '.tsx']);
  expect(working(tests)).toBeGreaterThanOrEqual(working(sources.filter((file) => !isContent(file))));
});
