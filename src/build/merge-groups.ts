import { type Chunk, type Chunks, codeOf, type Load, withImports } from './script-loads.ts';

/** Files as first bundled that become one. */
export interface Group {
  readonly chunks: readonly Chunk[];
  /** What it is loaded by, in vain or not. */
  readonly loads: ReadonlySet<Load>;
  /** Length of the code before it is made short. */
  readonly length: number;
  /** All files that it loads at once. */
  readonly needs: ReadonlySet<Chunk>;
}

/** What a length of code costs in each load. */
export type Prices = ReadonlyMap<Load, number>;

/** What a file costs by itself, as length of code: names of what goes in and out, and what compression must learn anew. */
const FILE_LENGTH = 1500;

const joined = (one: Group, other: Group): Group => ({
  chunks: [...one.chunks, ...other.chunks],
  loads: one.loads.union(other.loads),
  length: one.length + other.length,
  needs: one.needs.union(other.needs),
});

/** A group for each set of loads that share something. */
export function groupsBySet(chunks: Chunks, loads: readonly Load[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const chunk of chunks.values()) {
    const by = [...loads.entries()].filter(([, load]) => load.chunks.has(chunk));
    const own: Group = {
      chunks: [chunk],
      loads: new Set(by.map(([, load]) => load)),
      length: codeOf(chunk).length,
      needs: withImports(chunks, [chunk.fileName]),
    };
    const key = by.map(([index]) => index).join();
    const before = groups.get(key);
    groups.set(key, before === undefined ? own : joined(before, own));
  }
  return [...groups.values()];
}

/** Two groups that may become one, and how much cheaper all loads then are. */
interface Pair {
  readonly one: Group;
  readonly other: Group;
  gain: number;
}

/** Groups as they stand while they are joined at some prices. */
class Standing {
  readonly groups: Set<Group>;
  readonly #prices: Prices;
  readonly #homes = new Map<Chunk, Group>();
  readonly #costs = new Map<Group, number>();

  constructor(groups: readonly Group[], prices: Prices) {
    this.#prices = prices;
    this.groups = new Set();
    for (const group of groups) this.#add(group);
  }

  #add(group: Group): void {
    this.groups.add(group);
    this.#costs.set(group, this.#costOf(group.loads));
    for (const chunk of group.chunks) this.#homes.set(chunk, group);
  }

  #costOf(loads: Iterable<Load>): number {
    let cost = 0;
    for (const load of loads) cost += this.#prices.get(load) ?? 0;
    return cost;
  }

  /** What a length costs in the loads of both. */
  #shared(one: Group, other: Group): number {
    const [few, many] =
      one.loads.size < other.loads.size ? [one.loads, other.loads] : [other.loads, one.loads];
    let cost = 0;
    for (const load of few) if (many.has(load)) cost += this.#prices.get(load) ?? 0;
    return cost;
  }

  /** The other groups that two need, and what those need in turn. */
  #needsOf(one: Group, other: Group): readonly Group[] {
    const all = new Set([one, other]);
    for (const { needs } of all)
      for (const chunk of needs) {
        const home = this.#homes.get(chunk);
        if (home) all.add(home);
      }
    return [...all].slice(2);
  }

  /** How much cheaper all loads are where two groups are one file, which may bring others in vain. */
  gainOf(one: Group, other: Group): number {
    const both = this.#shared(one, other);
    const inVain = (group: Group, by: Group): number => group.length * ((this.#costs.get(by) ?? 0) - both);
    const gain = FILE_LENGTH * both - inVain(other, one) - inVain(one, other);
    if (gain <= 0) return 0;
    const loads = one.loads.union(other.loads);
    return this.#needsOf(one, other).reduce(
      (rest, need) => rest - (need.length + FILE_LENGTH) * this.#costOf(loads.difference(need.loads)),
      gain,
    );
  }

  /** Makes two groups one, with what it brings; the groups that are new, or loaded by more than before. */
  join({ one, other }: Pair): readonly Group[] {
    const whole = joined(one, other);
    const brought = this.#needsOf(one, other).filter(({ loads }) => !whole.loads.isSubsetOf(loads));
    for (const group of [one, other, ...brought]) this.groups.delete(group);
    const now = [whole, ...brought.map((group) => ({ ...group, loads: group.loads.union(whole.loads) }))];
    for (const group of now) this.#add(group);
    return now;
  }
}

/** Joins groups, the pair that gains most first, as long as a file less is worth what some then load in vain. */
export function merged(all: readonly Group[], prices: Prices): readonly Group[] {
  const standing = new Standing(all, prices);
  const pairsOf = (one: Group, others: Iterable<Group>): Pair[] =>
    [...others]
      .map((other) => ({ one, other, gain: standing.gainOf(one, other) }))
      .filter(({ gain }) => gain > 0);
  let pairs = all.flatMap((one, index) => pairsOf(one, all.slice(index + 1)));
  for (;;) {
    const best = pairs.reduce<Pair | undefined>((a, b) => (a && a.gain >= b.gain ? a : b), undefined);
    if (best === undefined) return [...standing.groups];
    const gain = standing.gainOf(best.one, best.other);
    if (gain < best.gain) {
      best.gain = gain; // other groups were joined since
      if (gain <= 0) pairs = pairs.filter((pair) => pair !== best);
      continue;
    }
    const now = standing.join(best);
    pairs = pairs.filter(({ one, other }) => standing.groups.has(one) && standing.groups.has(other));
    for (const [index, one] of now.entries()) {
      const rest = [...standing.groups].filter((group) => !now.slice(0, index + 1).includes(group));
      pairs.push(...pairsOf(one, rest));
    }
  }
}
