/** What of a bundled file matters here; the bundler's own description of a chunk has it. */
export interface Chunk {
  readonly fileName: string;
  readonly isEntry: boolean;
  readonly isDynamicEntry: boolean;
  readonly modules: Readonly<Record<string, { readonly renderedLength: number }>>;
  /** Names of the files that this one loads at once. */
  readonly imports: readonly string[];
}

/** Files as first bundled that become one, with the entries that load it. */
interface Group {
  readonly chunks: readonly Chunk[];
  readonly entries: ReadonlySet<string>;
  /** Length of the code before it is made short. */
  readonly length: number;
  /** Names of all files that it loads at once, itself among them. */
  readonly needs: ReadonlySet<string>;
}

/** What a file costs by itself, as length of code: names of what goes in and out, and what compression must learn anew. */
const FILE_LENGTH = 1300;
/** Power by which what a page loads counts, as a share of what it may load: the heaviest pages have the least to spare. */
const HEAVY = 16;

/** Folders whose pages may load more than a lesson's, and how many times as much: the applications, and the wall. */
const ROOMS: readonly (readonly [RegExp, number])[] = [
  [/\/src\/(?:bench|borrow|compare)\//, 90 / 40],
  [/\/src\/stage\//, 45 / 40],
];

/** How much more than a lesson an entry may load. */
const roomOf = ({ modules }: Chunk): number =>
  ROOMS.find(([folder]) => Object.keys(modules).some((module) => folder.test(module)))?.[1] ?? 1;

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

/** For each file the entries that load it at once. What is fetched by a call counts where no entry has the file at hand. */
function entriesByFile(chunks: ReadonlyMap<string, Chunk>): ReadonlyMap<string, ReadonlySet<string>> {
  const atOnce = new Map<string, Set<string>>();
  const byCall = new Map<string, Set<string>>();
  for (const entry of chunks.values()) {
    if (!(entry.isEntry || entry.isDynamicEntry)) continue;
    const into = entry.isEntry ? atOnce : byCall;
    for (const { fileName } of withImports(chunks, entry))
      into.set(fileName, (into.get(fileName) ?? new Set()).add(entry.fileName));
  }
  return new Map([...byCall, ...atOnce]);
}

const joined = (one: Group, other: Group): Group => ({
  chunks: [...one.chunks, ...other.chunks],
  entries: new Set([...one.entries, ...other.entries]),
  length: one.length + other.length,
  needs: new Set([...one.needs, ...other.needs]),
});

/** A group for each set of entries that share something. */
function groupsBySet(chunks: ReadonlyMap<string, Chunk>): Group[] {
  const groups = new Map<string, Group>();
  for (const [name, entries] of entriesByFile(chunks)) {
    const chunk = chunks.get(name);
    if (chunk === undefined) continue;
    const length = Object.values(chunk.modules).reduce((sum, each) => sum + each.renderedLength, 0);
    const needs = new Set([...withImports(chunks, chunk)].map(({ fileName }) => fileName));
    const own: Group = { chunks: [chunk], entries, length, needs };
    const key = [...entries].sort().join();
    const before = groups.get(key);
    groups.set(key, before === undefined ? own : joined(before, own));
  }
  return [...groups.values()];
}

/** How all groups stand before two of them are joined. */
interface Standing {
  /** What each entry loads in all. */
  readonly loads: ReadonlyMap<string, number>;
  /** The group of each file. */
  readonly home: ReadonlyMap<string, Group>;
  /** How much more than a lesson each entry may load. */
  readonly rooms: ReadonlyMap<string, number>;
}

function standingOf(groups: readonly Group[], rooms: Standing['rooms']): Standing {
  const loads = new Map<string, number>();
  for (const { entries, length } of groups)
    for (const entry of entries) loads.set(entry, (loads.get(entry) ?? 0) + length + FILE_LENGTH);
  const home = new Map(groups.flatMap((group) => group.chunks.map(({ fileName }) => [fileName, group])));
  return { loads, home, rooms };
}

/** Whether an entry has everything at hand that a group needs besides itself: else that would be loaded in vain too. */
const hasNeedsOf = (group: Group, entry: string, { home }: Standing): boolean =>
  [...group.needs].every((name) => {
    const other = home.get(name);
    return other === undefined || other === group || other.entries.has(entry);
  });

/**
 * How much less all entries load where two files are one; what a heavy page loads counts for more. Nothing where an entry would
 * then load a third file in vain.
 */
function gainOf(one: Group, other: Group, standing: Standing): number {
  let gain = 0;
  for (const entry of new Set([...one.entries, ...other.entries])) {
    const inVain = one.entries.has(entry) ? (other.entries.has(entry) ? undefined : other) : one;
    if (inVain && !hasNeedsOf(inVain, entry, standing)) return 0;
    const before = standing.loads.get(entry) ?? 0;
    const after = inVain ? before + inVain.length : before - FILE_LENGTH;
    const room = standing.rooms.get(entry) ?? 1;
    gain += (before / room) ** HEAVY - (after / room) ** HEAVY;
  }
  return gain;
}

/** Joins groups, the pair that gains most first, as long as a file less is worth what some then load in vain. */
function merged(all: readonly Group[], rooms: Standing['rooms']): readonly Group[] {
  const groups = [...all];
  for (;;) {
    const standing = standingOf(groups, rooms);
    let best = { gain: 0, one: -1, other: -1 };
    for (const [one, a] of groups.entries())
      for (const [other, b] of groups.entries()) {
        const gain = other > one ? gainOf(a, b, standing) : 0;
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
  const chunks = new Map(bundled.map((chunk) => [chunk.fileName, chunk]));
  const rooms = new Map(bundled.map((chunk) => [chunk.fileName, roomOf(chunk)]));
  return new Map(
    merged(groupsBySet(chunks), rooms).flatMap((group, index) =>
      group.chunks.flatMap(({ modules }) =>
        Object.keys(modules).map((module) => [module, `part-${index}`] as const),
      ),
    ),
  );
}
