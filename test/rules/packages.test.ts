import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { filesBelow } from './sources.ts';

const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as Record<
  'dependencies' | 'devDependencies' | 'optionalDependencies',
  Record<string, string>
>;

/** Packages whose code a reader's browser may be sent. Astro sends the loader of islands, KaTeX a stylesheet and its faces. */
const inBrowser = [
  '@astrojs/preact',
  'astro',
  'd3',
  'fflate',
  'idb',
  'katex',
  'minisearch',
  'preact',
  'ts-fsrs',
  'valibot',
];
/** Further packages that `src` uses while building alone. */
const whileBuilding = [
  '@astrojs/markdown-satteri',
  '@astrojs/mdx',
  '@astrojs/sitemap',
  'compression',
  'fontkit',
  'preact-render-to-string',
  'satteri',
  'sharp',
  'sirv',
  'source-sans',
  'subset-font',
  'typescript',
  'ultrahtml',
  'uqr',
  'vite',
];

/** The package of an import (`preact/hooks` -> `preact`); nothing for files, Node's own and what Astro makes up. */
function packageOf(source: string): string | undefined {
  if (/^(\.|#|node:|virtual:|astro:)/.test(source)) return undefined;
  return source
    .split('/')
    .slice(0, source.startsWith('@') ? 2 : 1)
    .join('/');
}

/** `import … from 'x'`, `export … from 'x'`, `import 'x'` and CSS's `@import 'x'`; and `import('x')`, which fetches it when it is used. */
const imports =
  /^\s*(?:import|export)\b[^'";=(]*\bfrom\s*['"]([^'"]+)['"]|^\s*@?import\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]/gm;

const imported = (folder: string): ReadonlySet<string> =>
  new Set(
    filesBelow(folder, ['.ts', '.tsx', '.astro', '.mdx', '.mjs', '.css'])
      .flatMap(({ text }) => [...text.matchAll(imports)])
      .map(([, from, bare, called]) => packageOf(from ?? bare ?? called ?? ''))
      .filter((name) => name !== undefined),
  );

test('the code of at most ten packages reaches the browser', () => {
  expect(inBrowser.length).toBeLessThanOrEqual(10);
});

test('the sources import no package that is not listed', () => {
  const listed = [...inBrowser, ...whileBuilding];
  expect(
    [...imported('src')].filter((name) => !listed.includes(name)),
    'goes into inBrowser or whileBuilding of this file, if it is worth its bytes',
  ).toEqual([]);
  expect(imported('src'), 'the pattern finds imports').toContain('preact');
});

test('every dependency of the site is listed, and every listed one is a dependency', () => {
  const all = { ...manifest.dependencies, ...manifest.devDependencies };
  const listed = [...inBrowser, ...whileBuilding];
  expect(Object.keys(manifest.dependencies).filter((name) => !listed.includes(name))).toEqual([]);
  expect(listed.filter((name) => !(name in all))).toEqual([]);
});

test('every version is exact', () => {
  const { dependencies, devDependencies, optionalDependencies } = manifest;
  const versions = Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies });
  expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});

/** Packages that nothing names, and what they are for. */
const UNNAMED: Readonly<Record<string, string>> = {
  '@astrojs/check': 'does the work of `astro check`',
  '@biomejs/biome': 'the linter, by the name of its program',
  '@types/d3': 'types of what d3 gives out',
  '@types/fontkit': 'types of what fontkit gives out',
  '@types/node': 'types of Node',
  '@vitest/coverage-v8': 'what `vitest --coverage` counts by',
};

test('every package is asked for by the sources, the tests or the settings', () => {
  const endings = ['.ts', '.tsx', '.astro', '.mdx', '.mjs', '.css'];
  const texts = ['src', 'test']
    .flatMap((folder) => filesBelow(folder, endings))
    .filter(({ path }) => path !== 'test/rules/packages.test.ts')
    .map(({ text }) => text)
    .concat(readFileSync(new URL('../../astro.config.mjs', import.meta.url), 'utf8'));
  const { dependencies, devDependencies } = manifest;
  // by an import, a call, an entry in a list, or a file of the package that is read
  const isNamed = (name: string): boolean =>
    [`'${name}'`, `'${name}/`, `node_modules/${name}/`].some((way) =>
      texts.some((text) => text.includes(way)),
    );
  const unnamed = Object.keys({ ...dependencies, ...devDependencies }).filter((name) => !isNamed(name));
  expect(unnamed).toEqual(Object.keys(UNNAMED));
});
