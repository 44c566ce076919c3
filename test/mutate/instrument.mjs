import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { createInstrumenter } from '@stryker-mutator/instrumenter';
import { build } from 'vite';
import { filesBelow, root, work } from './files.mjs';

/** What the instrumenter says by the way is of no use here. */
const silent = {
  isTraceEnabled: () => false,
  isDebugEnabled: () => false,
  isInfoEnabled: () => false,
  isWarnEnabled: () => false,
  isErrorEnabled: () => false,
  isFatalEnabled: () => false,
  trace() {},
  debug() {},
  info() {},
  warn() {},
  error() {},
  fatal() {},
};

/** The instrumenter wants to be made by an injector; it needs no more of one than this. */
function injector() {
  /** @type {Record<string, unknown>} */
  const given = { logger: silent };
  const self = {
    /** @param {string} token @param {unknown} value */
    provideValue(token, value) {
      given[token] = value;
      return self;
    },
    /** @param {{ new (...values: unknown[]): unknown, inject: string[] }} Class */
    injectClass: (Class) => new Class(...Class.inject.map((token) => given[token])),
  };
  return /** @type {Parameters<typeof createInstrumenter>[0]} */ (/** @type {unknown} */ (self));
}

/**
 * The instrumenter's own switches look names up; these compare numbers, so that the tests run nearly as fast as without.
 * @param {string | undefined} code @param {boolean} counting
 */
const withSwitches = (code, counting) =>
  code &&
  `const mutation__ = globalThis.mutation, hits__ = mutation__.hits;\n${code
    .replace(/stryCov_9fa48\(((?:"\d+"(?:, )?)+)\)/g, (_, ids) =>
      counting ? `(${ids.replace(/"(\d+)"/g, 'hits__[$1]++')})` : '0',
    )
    .replace(/stryMutAct_9fa48\("(\d+)"\)/g, '(mutation__.active === $1 && mutation__.hit())')}`;

const proof = ['compute', 'published', 'golden', 'oracle'];

/**
 * Puts the copies with switches in place of the sources, one entry that imports all tests, and the collector in vitest's place.
 * @param {ReadonlyMap<string, string>} copies @param {boolean} counting
 * @returns {import('vite').Plugin}
 */
function mutants(copies, counting) {
  const entry = '\0tests';
  const tests = proof.flatMap((folder) => filesBelow(`test/${folder}`, '.test.ts'));
  return {
    name: 'mutants',
    enforce: 'pre',
    resolveId(id) {
      if (id === 'mutants:tests') return entry;
      return id === 'vitest' ? resolve(import.meta.dirname, 'collect.mjs') : undefined;
    },
    load(id) {
      if (id === entry)
        return tests.map((name) => `import ${JSON.stringify(resolve(root, name))};`).join('\n');
      return withSwitches(copies.get(id), counting);
    },
    transform(code, id) {
      const name = id.slice(root.length + 1);
      return tests.includes(name)
        ? `globalThis.mutation.enter(${JSON.stringify(name)});\n${code}\nglobalThis.mutation.leave();`
        : undefined;
    },
  };
}

/** @param {ReadonlyMap<string, string>} copies @param {boolean} counting */
const bundle = (copies, counting) =>
  build({
    configFile: false,
    logLevel: 'warn',
    root,
    plugins: [mutants(copies, counting)],
    build: {
      ssr: true,
      outDir: work,
      emptyOutDir: false,
      copyPublicDir: false,
      minify: false,
      target: 'node24',
      rolldownOptions: {
        treeshake: false,
        input: 'mutants:tests',
        external: [/^fast-check/, /^node:/, /^decimal/, /^mathjs/, /^@stdlib/],
        output: { entryFileNames: counting ? 'counting.mjs' : 'plain.mjs' },
      },
    },
  });

/**
 * Puts every mutant of the computation into a copy of it behind a switch, and bundles all its tests with that copy, twice:
 * once counting which test reaches which mutant, once without counting. A list of the mutants lies beside the bundles.
 * @returns {Promise<import('./mutant.ts').Mutant[]>}
 */
export async function instrument() {
  const sources = filesBelow('src/compute', '.ts').filter((name) => !/\/(index|doors\/\w+)\.ts$/.test(name));
  const { files, mutants } = await createInstrumenter(injector()).instrument(
    sources.map((name) => ({
      name: resolve(root, name),
      mutate: true,
      content: readFileSync(resolve(root, name), 'utf8'),
    })),
    { plugins: null, excludedMutations: [], ignorers: [] },
  );
  const copies = new Map(files.map(({ name, content }) => [name, content]));
  rmSync(work, { recursive: true, force: true });
  mkdirSync(work, { recursive: true });
  for (const counting of [true, false]) await bundle(copies, counting);
  const list = mutants.map(({ id, fileName, mutatorName, replacement, location }) => ({
    id: Number(id),
    file: fileName.slice(root.length + 1),
    mutatorName,
    replacement,
    location,
  }));
  writeFileSync(resolve(work, 'mutants.json'), JSON.stringify(list));
  return list;
}
