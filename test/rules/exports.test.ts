import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { code, filesBelow, type SourceFile } from './sources.ts';

/** What a file gives out by name, and whether the name is a type. */
interface Export {
  readonly name: string;
  readonly isType: boolean;
}

const DECLARED = /^export (?:declare )?(?:async )?(const|let|function\*?|class|interface|type|enum) (\w+)/gm;

const exportsOf = ({ text }: SourceFile): readonly Export[] =>
  [...text.matchAll(DECLARED)].map(([, kind = '', name = '']) => ({
    name,
    isType: /^(interface|type)$/.test(kind),
  }));

/** Every name in a text, with how often it stands there; what comments say does not count. */
function namesIn(text: string): ReadonlyMap<string, number> {
  const names = new Map<string, number>();
  const plain = text.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
  for (const [name] of plain.matchAll(/[A-Za-z_$][\w$]*/g)) names.set(name, (names.get(name) ?? 0) + 1);
  return names;
}

/**
 * Exports that no other file names. A type may be there for what the file's own functions take and give; a value that
 * nobody else asks for need not be given out.
 */
function idleExports(from: readonly SourceFile[], users: readonly SourceFile[]): readonly string[] {
  const named = users.map(({ path, text }) => ({ path, names: namesIn(text) }));
  const usedBy = new Map<string, Set<string>>();
  for (const { path, names } of named)
    for (const name of names.keys()) usedBy.set(name, (usedBy.get(name) ?? new Set()).add(path));
  return from.flatMap((file) => {
    const own = namesIn(file.text);
    return exportsOf(file)
      .filter(({ name, isType }) => {
        const users = usedBy.get(name) ?? new Set();
        const others = users.size - (users.has(file.path) ? 1 : 0);
        return others === 0 && !(isType && (own.get(name) ?? 0) > 1);
      })
      .map(({ name }) => `${file.path}: ${name}`);
  });
}

const BETWEEN = /(import|export)\s+(?:type\s+)?\{([^}]*)\}\s+from\s+'(\.[^']+)'/g;
/** `a as b` is asked for as `a`, and passed on as `b`. */
const listed = (list: string, kind: 'import' | 'export'): readonly string[] =>
  list
    .split(',')
    .map((one) => one.trim().replace(/^type\s+/, ''))
    .map((one) => one.replace(kind === 'import' ? /\s+as\s+\w+$/ : /^\w+\s+as\s+/, ''))
    .filter((one) => one !== '');

/** Names that a file passes on from another and that nobody takes from it; a file that is fetched by a call is taken whole. */
function idlePassedOn(files: readonly SourceFile[]): readonly string[] {
  const place = (path: string, from = ''): string => posix.join(posix.dirname(path), from);
  const between = files.flatMap(({ path, text }) =>
    [...text.matchAll(BETWEEN)].map(([, kind, list = '', from]) => ({
      path,
      kind,
      list,
      from: place(path, from),
    })),
  );
  const taken = new Set(
    between.flatMap(({ list, from }) => listed(list, 'import').map((name) => `${from}: ${name}`)),
  );
  const whole = files.flatMap(({ path, text }) =>
    [...text.matchAll(/\bimport\(\s*'(\.[^']+)'/g)].map(([, from]) => place(path, from)),
  );
  return between
    .filter(({ path, kind }) => kind === 'export' && !whole.includes(path))
    .flatMap(({ path, list }) => listed(list, 'export').map((name) => `${path}: ${name}`))
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
  ])('is found: %s', (_, text) => {
    const files = [file('a.ts', text), used, file('c.ts', '/** b and B */')];
    expect(idleExports(files, files)).toHaveLength(1);
  });

  it.each([
    ['imported elsewhere', 'export const a = 1;'],
    ['a type of what is given out', 'export interface B {}\nexport const a = (): B => ({});'],
    ['not given out', 'const b = 1;'],
  ])('is not seen in what is %s', (_, text) => {
    const files = [file('a.ts', text), used];
    expect(idleExports(files, files)).toEqual([]);
  });
});

describe('a name that is passed on and that nobody takes', () => {
  const passing = file('src/a/index.ts', "export { b, type C, d as e } from './b.ts';");

  it('is found', () => {
    const taking = file(
      'src/c.ts',
      "import { b as other } from './a/index.ts';\nimport { e } from './a/b.ts';",
    );
    expect(idlePassedOn([passing, taking])).toEqual(['src/a/index.ts: C', 'src/a/index.ts: e']);
  });

  it('is not seen where it is taken, by name or with the whole file', () => {
    const taking = file('src/a/d.ts', "import { b, type C, e } from './index.ts';");
    expect(idlePassedOn([passing, taking])).toEqual([]);
    expect(idlePassedOn([passing, file('src/a/d.ts', "await import('./index.ts')")])).toEqual([]);
  });
});

/** The door of the computation gives out what others import from it; what the settings of content give out, Astro asks for. */
const ASKED_FOR_OTHERWISE = ['src/compute/index.ts', 'src/content.config.ts'];
/** What tests alone ask for, though it belongs with what it speaks of. */
const FOR_TESTS: Readonly<Record<string, string>> = {
  'src/address/spec-faults.ts: specFaults': 'tries a specification of fields',
  'src/checks/outcome.ts: outcomeOfExact': 'tries that a known difference is what it is said to be',
  'src/lessons/values.ts: valueIds': 'the list of all values, to find those that no lesson shows',
  'src/questions/index.ts: questionIds': 'the list of all questions, to find those that no lesson asks',
  'src/text/summary/format.ts: asSentence': 'says a summary in a sentence, as tests read it',
};

describe('the sources', () => {
  const sources = filesBelow('src', ['.ts', '.tsx']).filter(
    ({ path }) => !ASKED_FOR_OTHERWISE.includes(path),
  );
  const settings = file('astro.config.mjs', readFileSync('astro.config.mjs', 'utf8'));
  const all = [...filesBelow('src', [...code, '.mdx']), settings];
  const tests = filesBelow('test', code);

  it('give out no name that no other file asks for', () => {
    expect(idleExports(sources, [...all, ...tests])).toEqual([]);
  });

  it('pass on no name that nobody takes', () => {
    const passed = [...all, ...tests].filter(({ path }) => !ASKED_FOR_OTHERWISE.includes(path));
    expect(idlePassedOn(passed).filter((name) => name.startsWith('src/'))).toEqual([]);
  });

  it('hold nothing for tests alone that does nothing here', () => {
    const idle = idleExports(sources, all).filter((one) => {
      const [path = '', name = ''] = one.split(': ');
      return namesIn(sources.find((source) => source.path === path)?.text ?? '').get(name) === 1;
    });
    expect(idle.filter((one) => !Object.hasOwn(FOR_TESTS, one))).toEqual([]);
    expect(Object.keys(FOR_TESTS).filter((one) => !idle.includes(one))).toEqual([]);
  });
});
