/** Folders of `src` whose files know each other only along the arrows; `prose` is `layouts/prose`. */
export const folders = [
  'compute',
  'formulas',
  'sheet',
  'text',
  'styles',
  'figures',
  'address',
  'store',
  'offline',
  'instruments',
  'exchange',
  'search',
  'examples',
  'questions',
  'checks',
  'tables',
  'corrections',
  'access',
  'widgets',
  'bench',
  'borrow',
  'compare',
  'practice',
  'stage',
  'prose',
  'cards',
  'layouts',
  'lessons',
  'pages',
  'build',
] as const;

export type Folder = (typeof folders)[number];

const data = ['sheet', 'text'] as const;
const drawn = ['formulas', 'sheet', 'text', 'styles'] as const;
const parts = [...drawn, 'figures', 'address', 'store', 'questions', 'tables'] as const;
const applications = [
  ...parts,
  'instruments',
  'widgets',
  'exchange',
  'search',
  'examples',
  'checks',
] as const;
const frames = [
  ...applications,
  'bench',
  'borrow',
  'compare',
  'practice',
  'stage',
  'prose',
  'layouts',
  'offline',
] as const;

/**
 * Which other folders a folder may import from. `#compute`, the door of the computation, is open to all but `compute`, `styles` and
 * `build`; past the door goes nobody.
 */
export const mayImport: Record<Folder, readonly Folder[]> = {
  compute: [],
  styles: [],
  formulas: [],
  sheet: [],
  text: [],
  figures: drawn,
  address: drawn,
  store: [...data, 'address'],
  offline: ['store'],
  instruments: [...data, 'store'],
  exchange: [...data, 'address', 'styles', 'figures'],
  search: data,
  examples: data,
  questions: data,
  checks: data,
  tables: ['text'],
  corrections: [],
  access: [],
  widgets: parts,
  bench: applications,
  borrow: [...applications, 'bench'],
  compare: [...applications, 'bench', 'borrow'],
  practice: applications,
  stage: applications,
  prose: frames,
  cards: [...drawn, 'figures', 'address', 'exchange', 'examples', 'widgets'],
  layouts: [...frames, 'cards'],
  lessons: frames,
  pages: [...frames, 'cards', 'lessons', 'corrections', 'access'],
  build: ['styles', 'formulas', 'figures', 'text', 'offline'],
};
