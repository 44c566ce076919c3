/** What of a bundled file matters here; the bundler's own description of a chunk has it. */
export interface Chunk {
  readonly fileName: string;
  readonly isEntry: boolean;
  readonly isDynamicEntry: boolean;
  readonly modules: Readonly<Record<string, { readonly renderedLength: number }>>;
  /** Names of the files that this one loads at once. */
  readonly imports: readonly string[];
}

/** Modules in one file, with the entries that load it. */
interface Group {
  readonly modules: readonly string[];
  readonly entries: ReadonlySet<string>;
  /** Length of the code before it is made short. */
  readonly length: number;
}

/** What a file costs by itself, as length of code: names of what goes in and out, and what compression must learn anew. */
const FILE_LENGTH = 1300;
/** Power by which the load of a page counts. */
const HEAVY = 3;

/** A file with everything that it loads at once. */
function withImports(chunks: ReadonlyMap<string, Chunk>, first: Chunk): ReadonlySet<Chunk> {
  const all = new Set([first]);
  for (const chunk of all)
    for (const name of chunk.imports) {
      const imported = chunks.get(name);
      if (imported) all.add(imported);
    }
  return all;
}

/** For each module the entries that load it at once. What is fetched by a call counts where no entry has the module at hand. */
function entriesByModule(chunks: ReadonlyMap<string, Chunk>): ReadonlyMap<string, ReadonlySet<string>> {
  const atOnce = new Map<string, Set<string>>();
  const byCall = new Map<string, Set<string>>();
  for (const entry of chunks.values()) {
    if (!(entry.isEntry || entry.isDynamicEntry)) continue;
    const into = entry.isEntry ? atOnce : byCall;
    for (const { modules } of withImports(chunks, entry))
      for (const module of Object.keys(modules))
        into.set(module, (into.get(module) ?? new Set()).add(entry.fileName));
  }
  return new Map([...byCall, ...atOnce]);
}

/** A group for each set of entries that share something. */
function groupsBySet(bundled: readonly Chunk[]): Group[] {
  const lengths = new Map(
    bundled.flatMap(({ modules }) =>
      Object.entries(modules).map(([module, { renderedLength }]) => [module, renderedLength] as const),
    ),
  );
  const groups = new Map<string, Group>();
  for (const [module, entries] of entriesByModule(new Map(bundled.map((each) => [each.fileName, each])))) {
    const key = [...entries].sort().join();
    const { modules, length } = groups.get(key) ?? { modules: [], length: 0 };
    groups.set(key, {
      modules: [...modules, module],
      entries,
      length: length + (lengths.get(module) ?? 0),
    });
  }
  return [...groups.values()];
}

const joined = (one: Group, other: Group): Group => ({
  modules: [...one.modules, ...other.modules],
  entries: new Set([...one.entries, ...other.entries]),
  length: one.length + other.length,
});

/** What each entry loads in all. */
function loadsOf(groups: readonly Group[]): ReadonlyMap<string, number> {
  const loads = new Map<string, number>();
  for (const { entries, length } of groups)
    for (const entry of entries) loads.set(entry, (loads.get(entry) ?? 0) + length + FILE_LENGTH);
  return loads;
}

/** How much less all entries load where two files are one; what a heavy page loads counts for more. */
function gainOf(one: Group, other: Group, loads: ReadonlyMap<string, number>): number {
  let gain = 0;
  for (const entry of joined(one, other).entries) {
    const before = loads.get(entry) ?? 0;
    const less = one.entries.has(entry)
      ? other.entries.has(entry)
        ? FILE_LENGTH
        : -other.length
      : -one.length;
    gain += before ** HEAVY - (before - less) ** HEAVY;
  }
  return gain;
}

/** Joins groups, the pair that gains most first, as long as a file less is worth what some then load in vain. */
function merged(all: readonly Group[]): readonly Group[] {
  const groups = [...all];
  for (;;) {
    const loads = loadsOf(groups);
    let best = { gain: 0, one: -1, other: -1 };
    for (const [one, a] of groups.entries())
      for (const [other, b] of groups.entries()) {
        const gain = other > one ? gainOf(a, b, loads) : 0;
        if (gain > best.gain) best = { gain, one, other };
      }
    const [a, b] = [groups[best.one], groups[best.other]];
    if (a === undefined || b === undefined) return groups;
    groups.splice(best.other, 1);
    groups.splice(best.one, 1, joined(a, b));
  }
}

/** Name of the file that each module of a bundle goes into, so that an entry loads what it needs in few files and little in vain. */
export function fileOfModule(bundled: readonly Chunk[]): ReadonlyMap<string, string> {
  return new Map(
    merged(groupsBySet(bundled)).flatMap(({ modules }, index) =>
      modules.map((module) => [module, `part-${index}`] as const),
    ),
  );
}
