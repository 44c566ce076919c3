import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scriptBudget } from '../../src/build/script-budget.ts';
import type { Chunk } from '../../src/build/script-loads.ts';
import { fileOfModule } from '../../src/build/shared-groups.ts';

const LONG = 20_000;

interface Given {
  readonly imports?: readonly string[];
  readonly calls?: readonly string[];
  readonly length?: number;
}

/** Code of a length that compresses about as real code does, the same each time. */
function codeOf(name: string, length: number): string {
  let state = [...name].reduce((sum, letter) => sum * 31 + letter.charCodeAt(0), 7);
  let code = '';
  while (code.length < length) {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    code += state.toString(16);
  }
  return code.slice(0, length);
}

const chunk = ([name, { imports = [], calls = [], length = LONG }]: [string, Given]): Chunk => ({
  fileName: name,
  imports,
  dynamicImports: calls,
  modules: { [`${name}.ts`]: { code: codeOf(name, length) } },
});

/** The files of modules: what is bundled by name, and the islands on each page by its address. */
const filesOf = (
  bundled: Readonly<Record<string, Given>>,
  pages: Readonly<Record<string, readonly string[]>>,
): ReadonlyMap<string, string> =>
  fileOfModule(
    Object.entries(bundled).map(chunk),
    Object.entries(pages).map(([path, entries]) => ({ path, entries })),
  );

const ONE = '/learn/measuring/one/';
const OTHER = '/learn/measuring/other/';
const THIRD = '/learn/stacking/third/';

describe('which file a module goes into', () => {
  it('keeps what two pages do not share apart, and what they share in a file of its own', () => {
    const files = filesOf(
      { one: { imports: ['both'] }, other: { imports: ['both'] }, both: {} },
      { [ONE]: ['one'], [OTHER]: ['other'] },
    );
    expect(new Set(files.values()).size).toBe(3);
  });

  it('puts what one page needs into one file, wherever the bundler had cut it', () => {
    const files = filesOf(
      { one: { imports: ['far'] }, far: { imports: ['farther'] }, farther: {}, other: {} },
      { [ONE]: ['one'], [OTHER]: ['other'] },
    );
    expect(files.get('one.ts')).toBe(files.get('farther.ts'));
    expect(files.get('one.ts')).not.toBe(files.get('other.ts'));
  });

  it('counts pages, not islands: what stands on the same pages is one file', () => {
    const bundled = {
      question: { imports: ['base'] },
      one: { imports: ['base'] },
      other: { imports: ['base'] },
      base: {},
    };
    const lessons = filesOf(bundled, { [ONE]: ['question', 'one'], [OTHER]: ['question', 'other'] });
    expect(lessons.get('question.ts')).toBe(lessons.get('base.ts'));
    const withHome = filesOf(bundled, {
      [ONE]: ['question', 'one'],
      [OTHER]: ['question', 'other'],
      '/': ['one'],
    });
    expect(withHome.get('question.ts')).not.toBe(withHome.get('base.ts'));
  });

  it('does not count what is fetched later where the page has the module at hand', () => {
    const files = filesOf(
      { island: { imports: ['common'], calls: ['later'] }, later: { imports: ['common'] }, common: {} },
      { [ONE]: ['island'] },
    );
    expect(files.get('common.ts')).toBe(files.get('island.ts'));
    expect(files.get('later.ts')).not.toBe(files.get('island.ts'));
  });

  it('keeps what only later calls share out of what a page loads at once', () => {
    const files = filesOf(
      {
        island: { calls: ['later', 'last'] },
        later: { imports: ['words'] },
        last: { imports: ['words'] },
        words: {},
      },
      { [ONE]: ['island'] },
    );
    expect(files.get('words.ts')).not.toBe(files.get('island.ts'));
  });

  it('has calls fetch in vain what they must, rather than a page one file more at once', () => {
    const files = filesOf(
      { one: { imports: ['both'] }, other: { calls: ['both'] }, both: {} },
      { [ONE]: ['one'], [OTHER]: ['other'] },
    );
    expect(files.get('both.ts')).toBe(files.get('one.ts'));
    expect(files.get('both.ts')).not.toBe(files.get('other.ts'));
  });

  it('spends no file on a few bytes', () => {
    const files = filesOf(
      {
        one: { imports: ['all', 'tiny'] },
        other: { imports: ['all', 'tiny'] },
        third: { imports: ['all'] },
        all: {},
        tiny: { length: 20 },
      },
      { [ONE]: ['one'], [OTHER]: ['other'], [THIRD]: ['third'] },
    );
    expect(files.get('tiny.ts')).toBe(files.get('all.ts'));
    expect(files.get('one.ts')).not.toBe(files.get('all.ts'));
  });

  it('lets a page near its budget have few files at the cost of a light one, and no page with room', () => {
    const given = (heavy: string) =>
      filesOf(
        {
          heavy: { imports: ['all', 'some'], length: 50_000 },
          light: { imports: ['all'], length: 9000 },
          other: { imports: ['all', 'some'], length: 1000 },
          all: {},
          some: { length: 4000 },
        },
        { [heavy]: ['heavy'], [OTHER]: ['light'], [THIRD]: ['other'] },
      );
    expect(scriptBudget(ONE)).toBeLessThan(scriptBudget('/bench/'));
    const lesson = given(ONE);
    expect(lesson.get('some.ts')).toBe(lesson.get('all.ts'));
    const application = given('/bench/');
    expect(application.get('some.ts')).not.toBe(application.get('all.ts'));
  });

  it('brings no page a third file in vain by joining two', () => {
    const files = filesOf(
      {
        one: { imports: ['small', 'all'] },
        other: { imports: ['all'] },
        all: {},
        small: { imports: ['large'], length: 500 },
        large: { length: 50_000 },
      },
      { [ONE]: ['one'], [OTHER]: ['other'], '/': ['large'] },
    );
    expect(files.get('small.ts')).not.toBe(files.get('all.ts'));
  });

  it('names a file for every module, the same whatever the order of chunks and pages', () => {
    const names = ['a', 'b', 'c', 'd', 'e'];
    const some = fc.uniqueArray(fc.constantFrom(...names));
    const anyChunk = fc.record({ imports: some, calls: some, length: fc.integer({ min: 1, max: 2000 }) });
    fc.assert(
      fc.property(
        fc.tuple(anyChunk, anyChunk, anyChunk, anyChunk, anyChunk),
        fc.tuple(some, some, some),
        (chunks, entries) => {
          const bundled = chunks.map((given, index): [string, Given] => [names[index] ?? '', given]);
          const pages = [ONE, OTHER, THIRD].map((path, index): [string, readonly string[]] => [
            path,
            entries[index] ?? [],
          ]);
          const files = filesOf(Object.fromEntries(bundled), Object.fromEntries(pages));
          expect([...files.keys()].sort()).toEqual(names.map((name) => `${name}.ts`));
          const turned = filesOf(
            Object.fromEntries(bundled.toReversed()),
            Object.fromEntries(pages.toReversed()),
          );
          const together = (all: ReadonlyMap<string, string>): string[] =>
            names.map((name) =>
              names.filter((other) => all.get(`${other}.ts`) === all.get(`${name}.ts`)).join(''),
            );
          expect(together(turned)).toEqual(together(files));
        },
      ),
      { numRuns: 40 },
    );
  });

  it('leaves what a page itself runs in a file of its own, however well it would go with others', () => {
    const script = 'Deck.astro?astro&type=script&index=0&lang';
    const pages = [
      { path: ONE, entries: [script, 'one'] },
      { path: OTHER, entries: [script, 'one'] },
    ];
    const bundled = [
      chunk([script, { imports: ['deck'], length: 200 }]),
      chunk(['deck', {}]),
      chunk(['one', {}]),
    ];
    const files = fileOfModule(bundled, pages);
    expect(files.has(`${script}.ts`)).toBe(false);
    expect([...files.keys()].sort()).toEqual(['deck.ts', 'one.ts']);
  });

  it('brings the wall nothing of its steps before it is drawn; another page does so to have a file less', () => {
    const script = 'Deck.astro?astro&type=script&index=0&lang';
    const bundled = [
      chunk([script, { imports: ['line'], length: 200 }]),
      chunk(['line', { length: 500 }]),
      chunk(['step', { imports: ['line'], length: 40_000 }]),
    ];
    const isParted = (...paths: readonly string[]): boolean => {
      const files = fileOfModule(
        bundled,
        paths.map((path) => ({ path, entries: [script, 'step'] })),
      );
      return files.get('line.ts') !== files.get('step.ts');
    };
    expect(isParted('/club/stage/learn/measuring/one/')).toBe(true);
    expect(isParted(ONE)).toBe(false);
  });
});
