import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Folder, folders, mayImport } from './arrows.ts';
import { arrowsText } from './arrows-config.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** A file in the folder, two levels deep as most are, and the same place seen from a neighbour; the lessons lie in tracks, beside data for prose. */
const fileIn = (folder: Folder): string =>
  folder === 'prose' ? 'src/layouts/prose/a.ts' : `src/${folder}/deep/a.ts`;
const seenFrom = (from: Folder, to: Folder): string => {
  const up = '../../';
  const place = { prose: 'layouts/prose', lessons: 'lessons/sums' }[to as string] ?? to;
  return from === 'prose' && to === 'layouts' ? '../link.ts' : `${up}${place}/b.ts`;
};

interface Try {
  readonly from: string;
  readonly source: string;
  readonly allowed: boolean;
}

const hooksIn: readonly Folder[] = ['widgets', 'bench', 'borrow', 'compare', 'practice', 'stage'];
const between: readonly Try[] = folders.flatMap((from) =>
  folders
    .filter((to) => to !== from && to !== 'compute')
    .map((to) => ({
      from: fileIn(from),
      source: `import '${seenFrom(from, to)}';`,
      allowed: mayImport[from].includes(to),
    })),
);
const special: readonly Try[] = folders.flatMap((folder) => {
  const from = fileIn(folder);
  const alone = folder === 'compute';
  const sums = !['compute', 'styles', 'build'].includes(folder);
  return [
    { from, source: "import { evaluate } from '#compute';", allowed: sums },
    { from, source: "import '../../compute/decibel.ts';", allowed: alone },
    { from, source: "import { line } from 'd3';", allowed: folder === 'figures' },
    { from, source: "import { ticks } from 'd3-array';", allowed: folder === 'figures' },
    { from, source: "import katex from 'katex';", allowed: folder === 'build' },
    { from, source: "import { useState } from 'preact/hooks';", allowed: hooksIn.includes(folder) },
    {
      from,
      source: "import { useId } from 'preact/hooks';",
      allowed: [...hooksIn, 'figures'].includes(folder),
    },
    {
      from,
      source: "import { readFileSync } from 'node:fs';",
      allowed: ['build', 'cards', 'pages'].includes(folder),
    },
  ];
});
const others: readonly Try[] = [
  { from: 'src/layouts/prose/FormulaTex.ts', source: "import katex from 'katex';", allowed: true },
  { from: 'src/layouts/prose/FormulaTex.ts', source: "import { line } from 'd3';", allowed: false },
  { from: 'src/layouts/prose/Formula.ts', source: "import katex from 'katex';", allowed: false },
  { from: 'src/exchange/a.ts', source: "import { dsvFormat } from 'd3';", allowed: true },
  { from: 'src/bench/a.ts', source: "import { dsvFormat } from 'd3';", allowed: false },
  { from: 'src/layouts/prose/a.ts', source: "import '../../lessons/values.ts';", allowed: true },
  { from: 'src/cards/a.ts', source: "import '../lessons/values.ts';", allowed: true },
  { from: 'src/cards/a.ts', source: "import '../lessons/sums/one.mdx';", allowed: false },
  { from: 'src/layouts/prose/a.ts', source: "import '../../lessons/sums/one.mdx';", allowed: false },
  { from: 'test/text/a.test.ts', source: "import '../../src/compute/decibel.ts';", allowed: false },
  { from: 'test/compute/a.test.ts', source: "import '../../src/compute/decibel.ts';", allowed: true },
];
const tries = [...between, ...special, ...others];

let place = '';
let refused = new Set<string>();

/** Lints one file that holds all imports of a place, a line each; answers `file:line` of each that the linter refuses. */
function refusals(): Set<string> {
  const biome = join(root, 'node_modules/.bin/biome');
  const args = ['lint', '--vcs-enabled=false', '--only=style/noRestrictedImports', '--max-diagnostics=none'];
  const { stdout } = spawnSync(biome, [...args, '--reporter=json', 'src', 'test'], {
    cwd: place,
    encoding: 'utf8',
  });
  const report = JSON.parse(stdout) as {
    diagnostics: { category: string; location: { path: string; start: { line: number } } }[];
  };
  const restricted = report.diagnostics.filter(
    ({ category }) => category === 'lint/style/noRestrictedImports',
  );
  return new Set(restricted.map(({ location }) => `${location.path}:${location.start.line}`));
}

const linesOf = (file: string): readonly string[] =>
  tries.filter(({ from }) => from === file).map((one) => one.source);

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'arrows-'));
  for (const file of ['.biome.json', 'test/rules/arrows.json']) cpSync(join(root, file), join(place, file));
  for (const file of new Set(tries.map(({ from }) => from))) {
    mkdirSync(join(place, dirname(file)), { recursive: true });
    writeFileSync(join(place, file), `${linesOf(file).join('\n')}\n`);
  }
  refused = refusals();
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

describe('the linter', () => {
  test('reads the arrows as they stand in the table', () => {
    expect(readFileSync(join(root, 'test/rules/arrows.json'), 'utf8'), 'npm run arrows').toBe(arrowsText());
  });

  test.each(folders)('refuses each import of %s against the arrows, and no other', (folder) => {
    const file = fileIn(folder);
    const told = tries
      .filter(({ from }) => from === file)
      .map((one, i) => ({ source: one.source, allowed: !refused.has(`${file}:${i + 1}`) }));
    const wished = tries
      .filter(({ from }) => from === file)
      .map(({ source, allowed }) => ({ source, allowed }));
    expect(told.filter((one, i) => one.allowed !== wished[i]?.allowed)).toEqual([]);
  });

  test.each(others)('$from: $source allowed: $allowed', ({ from, source, allowed }) => {
    expect(!refused.has(`${from}:${linesOf(from).indexOf(source) + 1}`)).toBe(allowed);
  });
});
