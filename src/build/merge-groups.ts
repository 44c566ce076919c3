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
  *#needsOf(one: Group, other: Group): Generator<Group> {
    const all = new Set([one, other]);
    for (const { needs } of all)
      for (const chunk of needs) {
        const home = this.#homes.get(chunk);
        if (home === undefined || all.has(home)) continue;
        all.add(home);
        yield home;
      }
  }

  /** What a length costs in the loads of one or other of two that do not load a third. */
  #without(one: Group, other: Group, third: Group): number {
    let cost = 0;
    for (const load of one.loads) if (!third.loads.has(load)) cost += this.#prices.get(load) ?? 0;
    for (const load of other.loads)
      if (!one.loads.has(load) && !third.loads.has(load)) cost += this.#prices.get(load) ?? 0;
    return cost;
  }

  /** How much cheaper all loads are where two groups are one file, which may bring others in vain; nothing where they are dearer. */
  gainOf(one: Group, other: Group): number {
    const [ofOne, ofOther] = [this.#costs.get(one) ?? 0, this.#costs.get(other) ?? 0];
    const byThemselves = (both: number): number =>
      FILE_LENGTH * both - other.length * (ofOne - both) - one.length * (ofOther - both);
    // at best they share all that one of them costs; counting what they do share takes longer
    if (byThemselves(Math.min(ofOne, ofOther)) <= 0) return 0;
    let gain = byThemselves(this.#shared(one, other));
    if (gain <= 0) return 0;
    for (const need of this.#needsOf(one, other)) {
      gain -= (need.length + FILE_LENGTH) * this.#without(one, other, need);
      if (gain <= 0) return 0;
    }
    return gain;
  }

  /** Makes two groups one, with what it brings; the groups that are new, or loaded by more than before. */
  join({ one, other }: Pair): readonly Group[] {
    const whole = joined(one, other);
    const brought = [...this.#needsOf(one, other)].filter(({ loads }) => !whole.loads.isSubsetOf(loads));
    for (const group of [one, other, ...brought]) this.groups.delete(group);
    const now = [whole, ...brought.map((group) => ({ ...group, loads: group.loads.union(whole.loads) }))];
    for (const group of now) this.#add(group);
    return now;
  }
}

/** Pairs of groups that share a load: no others can gain by becoming one. */
export const sharingPairs = (all: readonly Group[]): readonly (readonly [Group, Group])[] =>
  all.flatMap((one, index) =>
    all
      .slice(index + 1)
      .filter((other) => !one.loads.isDisjointFrom(other.loads))
      .map((other) => [one, other] as const),
  );

/** Joins groups, the pair that gains most first, as long as a file less is worth what some then load in vain. */
export function merged(
  all: readonly Group[],
  prices: Prices,
  sharing: readonly (readonly [Group, Group])[] = sharingPairs(all),
): readonly Group[] {
  const standing = new Standing(all, prices);
  const pairOf = (one: Group, other: Group): Pair => ({ one, other, gain: standing.gainOf(one, other) });
  const gains = ({ gain }: Pair): boolean => gain > 0;
  let pairs = sharing.map(([one, other]) => pairOf(one, other)).filter(gains);
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
      pairs.push(...rest.map((other) => pairOf(one, other)).filter(gains));
    }
  }
}
