import { type Folder, folders, mayImport } from './arrows.ts';

/** Folders that keep state in Preact's hooks; a figure may take `useId` alone. */
const withHooks: readonly Folder[] = ['widgets', 'bench', 'borrow', 'compare', 'practice', 'stage'];
/** Folders that run in Node: while building, and where a page is a file such as a card. */
const inNode: readonly Folder[] = ['build', 'cards', 'pages'];
const withoutSums: readonly Folder[] = ['styles', 'build'];
const formulaTag = 'src/layouts/prose/FormulaTex*';

interface Pattern {
  readonly group: readonly string[];
  readonly message: string;
}
type Paths = Record<
  string,
  string | { readonly message: string; readonly allowImportNames: readonly string[] }
>;

const files: Partial<Record<Folder, readonly string[]>> = {
  prose: ['src/layouts/prose/**', `!${formulaTag}`],
  layouts: ['src/layouts/**', '!src/layouts/prose/**'],
};

/** Every folder that this one may not know; `layouts` cannot be told from `prose` by its path, being the folder around it. */
const strangers = (folder: Folder): readonly Folder[] =>
  folders.filter(
    (other) =>
      other !== folder &&
      other !== 'compute' &&
      !mayImport[folder].includes(other) &&
      !(folder === 'prose' && other === 'layouts'),
  );

function patterns(folder: Folder): readonly Pattern[] {
  const group = [`**/{${strangers(folder).join(',')}}/**`];
  if (folder === 'compute') {
    return [
      { group: ['**', '!./**', '!../**', ...group], message: 'compute stands alone: only files of its own.' },
    ];
  }
  // data beside the lessons (the values of their prose, the tracks), not the lessons
  if (folder === 'prose' || folder === 'layouts' || folder === 'cards') group.push('!**/lessons/*.ts');
  const out: Pattern[] = [
    { group, message: `Against the arrows: ${folder} does not know this folder.` },
    { group: ['**/compute/**'], message: 'Past the door: import from #compute.' },
  ];
  if (folder !== 'figures') {
    // tables are written with D3 as well, which is one name and not the whole
    const group = folder === 'exchange' ? ['d3-*'] : ['d3', 'd3-*'];
    out.push({ group, message: 'Only figures/ draws with D3.' });
  }
  if (!inNode.includes(folder)) {
    out.push({ group: ['node:*'], message: 'Only build/, cards and tests run in Node.' });
  }
  return out;
}

function paths(folder: Folder): Paths {
  if (folder === 'compute') return {};
  const out: Paths = {};
  // the build learns from it which letters formulas are set in
  if (folder !== 'build') out.katex = 'Only the formula tag renders formulas.';
  if (withoutSums.includes(folder)) out['#compute'] = 'No sums here.';
  if (folder === 'exchange') {
    out.d3 = { message: 'Only figures/ draws with D3.', allowImportNames: ['dsvFormat'] };
  }
  if (folder === 'figures') {
    out['preact/hooks'] = { message: 'A figure is a function of its props.', allowImportNames: ['useId'] };
  } else if (!withHooks.includes(folder)) {
    out['preact/hooks'] =
      'State lives in widgets/ and in the applications: bench/, borrow/, compare/, practice/, stage/.';
  }
  return out;
}

const override = (includes: readonly string[], options: object): object => ({
  includes,
  linter: { rules: { style: { noRestrictedImports: { level: 'error', options } } } },
});

/** The linter's restricted imports that enforce the arrows, one override a folder. */
export function arrowsConfig(): { readonly overrides: readonly object[] } {
  const perFolder = folders.map((folder) =>
    override(files[folder] ?? [`src/${folder}/**`], { paths: paths(folder), patterns: patterns(folder) }),
  );
  const { katex: _, ...tagPaths } = paths('prose');
  const tag = override([formulaTag], { paths: tagPaths, patterns: patterns('prose') });
  const door = { group: ['**/src/compute/**'], message: 'Past the door: import from #compute.' };
  const tests = override(['test/**', '!test/compute/**'], { patterns: [door] });
  return { overrides: [...perFolder, tag, tests] };
}

/** The same as the text of `arrows.json`: one override a line. */
export function arrowsText(): string {
  const lines = arrowsConfig().overrides.map((one) => `    ${JSON.stringify(one)}`);
  return `{\n  "overrides": [\n${lines.join(',\n')}\n  ]\n}\n`;
}
