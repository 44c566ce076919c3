import type { Page } from './page-scripts.ts';

/** What of a bundled file matters here; the bundler's own description of a chunk has it. */
export interface Chunk {
  readonly fileName: string;
  /** What is left of each module's code, not made short yet. */
  readonly modules: Readonly<Record<string, { readonly code: string | null }>>;
  /** Names of the files that this one loads at once. */
  readonly imports: readonly string[];
  /** Names of the files that it may fetch later, by a call. */
  readonly dynamicImports: readonly string[];
}

/** Files by name. */
export type Chunks = ReadonlyMap<string, Chunk>;

/** What is loaded in one go: by pages as they open, or by a call on them. */
export interface Load {
  /** Addresses of the pages. */
  readonly paths: readonly string[];
  readonly chunks: ReadonlySet<Chunk>;
  readonly byCall: boolean;
  /** Whether it is what the wall runs before it is drawn as it stays, without its islands. */
  readonly early: boolean;
}

export const codeOf = ({ modules }: Chunk): string =>
  Object.values(modules)
    .map(({ code }) => code ?? '')
    .join('');

/** Files with everything that they load at once. */
export function withImports(chunks: Chunks, names: Iterable<string>): ReadonlySet<Chunk> {
  const found = (each: Iterable<string>): Chunk[] => [...each].flatMap((name) => chunks.get(name) ?? []);
  const all = new Set(found(names));
  for (const { imports } of all) for (const chunk of found(imports)) all.add(chunk);
  return all;
}

/** Loads of the same files, as one. */
function together(loads: readonly Load[]): readonly Load[] {
  const bySet = new Map<string, Load>();
  for (const load of loads) {
    const key = [...load.chunks].map(({ fileName }) => fileName).sort();
    const before = bySet.get(key.join());
    bySet.set(key.join(), { ...load, paths: [...(before?.paths ?? []), ...load.paths] });
  }
  return [...bySet.values()];
}

/**
 * Whether a file is what a page itself runs, a `<script>` of it with what nothing else asks for: it acts when it is loaded, where others only
 * offer what they have, and it is loaded before the page is drawn, where islands come after.
 */
export const isPageScript = ({ modules }: Chunk): boolean =>
  Object.keys(modules).some((module) => module.includes('astro&type=script'));

/** What pages load as they open; only their own scripts, if `early`. */
const atOnce = (chunks: Chunks, pages: readonly Page[], early: boolean): readonly Load[] =>
  together(
    pages
      .map(({ path, entries }) => ({
        paths: [path],
        chunks: withImports(chunks, early ? entries.filter(isEarly(chunks)) : entries),
        byCall: false,
        early,
      }))
      .filter((load) => load.chunks.size > 0),
  );

const isEarly =
  (chunks: Chunks) =>
  (entry: string): boolean => {
    const chunk = chunks.get(entry);
    return chunk !== undefined && isPageScript(chunk);
  };

/** What calls fetch on a page that has some files at hand, and in turn on what they fetched. */
function callsOn(chunks: Chunks, page: Load): readonly Load[] {
  const called = new Set([...page.chunks].flatMap(({ dynamicImports }) => dynamicImports));
  const calls: Load[] = [];
  for (const name of called) {
    const all = withImports(chunks, [name]);
    for (const next of [...all].flatMap(({ dynamicImports }) => dynamicImports)) called.add(next);
    calls.push({ ...page, byCall: true, chunks: all.difference(page.chunks) });
  }
  return calls.filter((call) => call.chunks.size > 0);
}

/** All that is loaded in one go on a site's pages. */
export function loadsOf(chunks: Chunks, pages: readonly Page[]): readonly Load[] {
  const opened = atOnce(chunks, pages, false);
  const wall = pages.filter(({ path }) => path.includes('/stage/'));
  return [
    ...opened,
    ...atOnce(chunks, wall, true),
    ...together(opened.flatMap((page) => callsOn(chunks, page))),
  ];
}
