import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { code, filesBelow, type SourceFile } from './sources.ts';

/** A name that a file gives out, and whether the file itself has a use for it. */
interface Export {
  readonly name: string;
  readonly isType: boolean;
  readonly timesInFile: number;
}

const DECLARED = /^export (?:declare )?(?:async )?(const|let|function\*?|class|interface|type|enum) (\w+)/gm;
const BETWEEN = /(import|export)\s+(?:type\s+)?(?:\w+\s*,\s*)?\{([^}]*)\}\s+from\s+'(\.[^']+)'/g;
/** A file that is fetched by a call, taken under one name, or spoken of as a type: all that it has may be used. */
const TAKEN_WHOLE = /(?:\bimport\(\s*(?:\/\*.*?\*\/\s*)?|\*(?:\s+as\s+\w+)?\s+from\s+)['"`](\.[^'"`]+)['"`]/g;

/** Names of a list between braces: `a as b` is asked for as `a`, and passed on as `b`. */
const listed = (list: string, kind: 'import' | 'export'): readonly string[] =>
  list
    .split(',')
    .map((one) => one.trim().replace(/^type\s+/, ''))
    .map((one) => one.replace(kind === 'import' ? /\s+as\s+\w+$/ : /^\w+\s+as\s+/, ''))
    .filter((one) => one !== '');

/** How often a name stands in a text; what comments say does not count. */
const times = (name: string, text: string): number =>
  text.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '').match(new RegExp(`\\b${name}\\b`, 'g'))?.length ?? 0;

/** What a file gives out: what it declares, and what it passes on from another. */
const exportsOf = ({ text }: SourceFile): readonly Export[] => [
  ...[...text.matchAll(DECLARED)].map(([, kind = '', name = '']) => ({
    name,
    isType: /^(interface|type)$/.test(kind),
    timesInFile: times(name, text),
  })),
  ...[...text.matchAll(BETWEEN)]
    .filter(([, kind]) => kind === 'export')
    .flatMap(([, , list = '']) => listed(list, 'export'))
    .map((name) => ({ name, isType: false, timesInFile: 1 })),
];

/** Where names are taken from, as `file: name`; and files that are taken whole. */
function takenBy(users: readonly SourceFile[]): { readonly names: Set<string>; readonly whole: Set<string> } {
  const place = (path: string, from = ''): string => posix.join(posix.dirname(path), from);
  return {
    names: new Set(
      users.flatMap(({ path, text }) =>
        [...text.matchAll(BETWEEN)].flatMap(([, , list = '', from]) =>
          listed(list, 'import').map((name) => `${place(path, from)}: ${name}`),
        ),
      ),
    ),
    whole: new Set(
      users.flatMap(({ path, text }) => [...text.matchAll(TAKEN_WHOLE)].map(([, from]) => place(path, from))),
    ),
  };
}

/**
 * Exports that no other file takes. A type may be there for what the file's own functions take and give; a value that
 * nobody else asks for need not be given out.
 */
function idleExports(from: readonly SourceFile[], users: readonly SourceFile[]): readonly string[] {
  const { names, whole } = takenBy(users);
  return from
    .filter(({ path }) => !whole.has(path))
    .flatMap((file) =>
      exportsOf(file)
        .filter(({ name, isType, timesInFile }) => {
          const forItself = isType && timesInFile > 1;
          return !names.has(`${file.path}: ${name}`) && !forItself;
        })
        .map(({ name }) => `${file.path}: ${name}`),
    );
}

const FROM_DOOR = /\bimport\s+(?:type\s+)?\{([^}]*)\}\s+from\s+'#compute'/g;

/** Values that the lists behind the door of the computation give out, and that none of the users takes from it. A type may be there for what is given and taken. */
function idleBehindDoor(lists: readonly SourceFile[], users: readonly SourceFile[]): readonly string[] {
  const taken = new Set(
    users.flatMap(({ text }) =>
      [...text.matchAll(FROM_DOOR)].flatMap(([, list = '']) => listed(list, 'import')),
    ),
  );
  return lists
    .flatMap((list) =>
      exportsOf({ ...list, text: list.text.replace(/^export type \{[^}]*\}.*$|\btype \w+,?/gm, '') }),
    )
    .map(({ name }) => name)
    .filter((name) => !taken.has(name));
}

const file = (path: string, text: string): SourceFile => ({ path, text, lines: 1 });

describe('an export that nobody asks for', () => {
  const used = file('b.ts', "import { a } from './a.ts';");

  it.each([
    ['a value', 'export const b = 1; const c = b;'],
    ['a function', 'export function b() {}'],
    ['a type that its own file does not use', 'export interface B {}'],
    ['one that only a comment names', 'export const b = 1;'],
    ['one that is passed on', "export { b } from './d.ts';"],
    ['one that is passed on by another name', "export { a as b } from './d.ts';"],
  ])('is found: %s', (_, text) => {
    const files = [file('a.ts', text), used, file('c.ts', '/** b and B */ const b = 2;')];
    expect(idleExports(files, files)).toHaveLength(1);
  });

  it.each([
    ['imported elsewhere', 'export const a = 1;'],
    ['passed on and taken', "export { b as a } from './d.ts';"],
    ['a type of what is given out', 'export interface B {}\nexport const a = (): B => ({});'],
    ['not given out', 'const b = 1;'],
  ])('is not seen in what is %s', (_, text) => {
    const files = [file('a.ts', text), used];
    expect(idleExports(files, files)).toEqual([]);
  });

  it.each(["import('./a.ts')", "import * as all from './a.ts'", "export * from './a.ts'"])(
    'is not seen in what is taken whole: %s',
    (taken) => {
      expect(idleExports([file('a.ts', 'export const b = 1;')], [file('c.ts', taken)])).toEqual([]);
    },
  );
});

describe('a value behind the door of the computation', () => {
  const list = file(
    'doors/a.ts',
    "export type {\n  T,\n} from '../b.ts';\nexport { a, type U, b } from '../b.ts';",
  );

  it.each([
    ["import { a } from '#compute';", ['b']],
    ["import { type T, b as c } from '#compute';", ['a']],
    ["import { b } from '../b.ts';", ['a', 'b']],
  ])('is found idle where others only say %s', (text, idle) => {
    expect(idleBehindDoor([list], [file('c.ts', text)])).toEqual(idle);
  });
});

/** What the settings of content give out, Astro asks for. */
const ASKED_FOR_OTHERWISE = ['src/content.config.ts'];
/** What tests alone ask for, though it belongs with what it speaks of. */
const FOR_TESTS: Readonly<Record<string, string>> = {
  'src/address/spec-faults.ts: specFaults': 'tries a specification of fields',
  'src/checks/outcome.ts: outcomeOfExact': 'tries that a known difference is what it is said to be',
  'src/lessons/values.ts: valueIds': 'the list of all values, to find those that no lesson shows',
  'src/questions/bank/figure.ts: placesOf':
    'the places that a figure has, to hold a question’s answers to them',
  'src/questions/index.ts: questionIds': 'the list of all questions, to find those that no lesson asks',
  'src/text/summary/format.ts: asSentence': 'says a summary in a sentence, as tests read it',
};

describe('the sources', () => {
  // Astro asks for what a page or a route gives out
  const sources = filesBelow('src', ['.ts', '.tsx']).filter(
    ({ path }) => !ASKED_FOR_OTHERWISE.includes(path) && !path.startsWith('src/pages/'),
  );
  const settings = file('astro.config.mjs', readFileSync('astro.config.mjs', 'utf8'));
  const all = [...filesBelow('src', [...code, '.mdx']), settings];
  const tests = filesBelow('test', code);

  it('give out no name that no other file asks for', () => {
    expect(idleExports(sources, [...all, ...tests]), 'take the word export away').toEqual([]);
  });

  it('take every value that the computation gives out', () => {
    expect(idleBehindDoor(filesBelow('src/compute/doors', ['.ts']), all)).toEqual([]);
  });

  it('hold nothing for tests alone that does nothing here', () => {
    const idle = idleExports(sources, all).filter((one) => {
      const [path = '', name = ''] = one.split(': ');
      return times(name, sources.find((source) => source.path === path)?.text ?? '') === 1;
    });
    expect(
      idle.filter((one) => !Object.hasOwn(FOR_TESTS, one)),
      'only tests ask for it: test it through what asks for it, or say in FOR_TESTS why not',
    ).toEqual([]);
    expect(Object.keys(FOR_TESTS).filter((one) => !idle.includes(one))).toEqual([]);
  });
});
