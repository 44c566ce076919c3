import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chunk, fileOfModule } from '../../src/build/shared-groups.ts';

const LONG = 20_000;

interface Given {
  readonly name: string;
  readonly kind?: 'island' | 'call';
  readonly imports?: readonly string[];
  readonly lengths?: Readonly<Record<string, number>>;
}

const chunk = ({ name, kind, imports = [], lengths = { [`${name}.ts`]: LONG } }: Given): Chunk => ({
  fileName: name,
  isEntry: kind === 'island',
  isDynamicEntry: kind === 'call',
  imports,
  modules: Object.fromEntries(
    Object.entries(lengths).map(([module, renderedLength]) => [module, { renderedLength }]),
  ),
});

const filesOf = (...chunks: readonly Given[]): ReadonlyMap<string, string> => fileOfModule(chunks.map(chunk));

describe('which file a module goes into', () => {
  it('keeps what two islands do not share apart, and what they share in a file of its own', () => {
    const files = filesOf(
      { name: 'one', kind: 'island', imports: ['both'] },
      { name: 'other', kind: 'island', imports: ['both'] },
      { name: 'both' },
    );
    expect(new Set(files.values()).size).toBe(3);
  });

  it('puts what one island needs into one file, wherever the bundler had cut it', () => {
    const files = filesOf(
      { name: 'one', kind: 'island', imports: ['far'] },
      { name: 'far', imports: ['farther'] },
      { name: 'farther' },
      { name: 'other', kind: 'island' },
    );
    expect(files.get('one.ts')).toBe(files.get('farther.ts'));
    expect(files.get('one.ts')).not.toBe(files.get('other.ts'));
  });

  it('does not count what is fetched later where the island has the module at hand', () => {
    const files = filesOf(
      { name: 'island', kind: 'island', imports: ['common'] },
      { name: 'later', kind: 'call', imports: ['common'] },
      { name: 'common' },
    );
    expect(files.get('common.ts')).toBe(files.get('island.ts'));
    expect(files.get('later.ts')).not.toBe(files.get('island.ts'));
  });

  it('keeps what only later calls share out of the islands', () => {
    const files = filesOf(
      { name: 'island', kind: 'island' },
      { name: 'later', kind: 'call', imports: ['words'] },
      { name: 'last', kind: 'call', imports: ['words'] },
      { name: 'words' },
    );
    expect(files.get('words.ts')).not.toBe(files.get('island.ts'));
  });

  it('spends no file on a few bytes', () => {
    const files = filesOf(
      { name: 'one', kind: 'island', imports: ['all', 'tiny'] },
      { name: 'other', kind: 'island', imports: ['all', 'tiny'] },
      { name: 'third', kind: 'island', imports: ['all'] },
      { name: 'all' },
      { name: 'tiny', lengths: { 'tiny.ts': 20 } },
    );
    expect(files.get('tiny.ts')).toBe(files.get('all.ts'));
    expect(files.get('one.ts')).not.toBe(files.get('all.ts'));
  });

  it('lets a heavy lesson have few files at the cost of a light one, and no application', () => {
    const given = (heavy: string) =>
      filesOf(
        { name: 'heavy', kind: 'island', imports: ['all', 'some'], lengths: { [heavy]: LONG } },
        { name: 'light', kind: 'island', imports: ['all'], lengths: { 'light.ts': 9000 } },
        { name: 'other', kind: 'island', imports: ['all', 'some'], lengths: { 'other.ts': 9000 } },
        { name: 'all' },
        { name: 'some', lengths: { 'some.ts': 2000 } },
      );
    const lesson = given('/src/widgets/Heavy.tsx');
    expect(lesson.get('some.ts')).toBe(lesson.get('all.ts'));
    const application = given('/src/bench/Heavy.tsx');
    expect(application.get('some.ts')).not.toBe(application.get('all.ts'));
  });

  it('leaves a heavy wall a file more rather than load a lesson in vain, since a wall may load more', () => {
    const given = (heavy: string) =>
      filesOf(
        { name: 'heavy', kind: 'island', imports: ['all', 'some'], lengths: { [heavy]: LONG } },
        { name: 'light', kind: 'island', imports: ['all'], lengths: { 'light.ts': 16_000 } },
        { name: 'other', kind: 'island', imports: ['all', 'some'], lengths: { 'other.ts': 9000 } },
        { name: 'all' },
        { name: 'some', lengths: { 'some.ts': 2000 } },
      );
    const lesson = given('/src/widgets/Heavy.tsx');
    expect(lesson.get('some.ts')).toBe(lesson.get('all.ts'));
    const wall = given('/src/stage/StageHeavy.tsx');
    expect(wall.get('some.ts')).not.toBe(wall.get('all.ts'));
  });

  it('names a file for every module that is loaded, the same whatever the order of the chunks', () => {
    const names = ['a', 'b', 'c', 'd', 'e'];
    const anyChunk = fc.record({
      imports: fc.uniqueArray(fc.constantFrom(...names)),
      length: fc.integer({ min: 1, max: LONG }),
    });
    fc.assert(
      fc.property(fc.tuple(anyChunk, anyChunk, anyChunk, anyChunk, anyChunk), (chunks) => {
        const given = chunks.map(({ imports, length }, index) => {
          const name = names[index] ?? '';
          return { name, kind: 'island' as const, imports, lengths: { [`${name}.ts`]: length } };
        });
        const files = filesOf(...given);
        expect([...files.keys()].sort()).toEqual(names.map((name) => `${name}.ts`));
        const together = (all: ReadonlyMap<string, string>): string[] =>
          names.map((name) =>
            names.filter((other) => all.get(`${other}.ts`) === all.get(`${name}.ts`)).join(''),
          );
        expect(together(filesOf(...given.toReversed()))).toEqual(together(files));
      }),
      { numRuns: 60 },
    );
  });
});
