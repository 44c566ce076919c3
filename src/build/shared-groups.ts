import { gzipSync } from 'node:zlib';
import { type Group, groupsBySet, merged, sharingPairs } from './merge-groups.ts';
import type { Page } from './page-scripts.ts';
import { scriptBudget } from './script-budget.ts';
import { type Chunk, codeOf, isPageScript, type Load, loadsOf } from './script-loads.ts';

/** What travels of code that is compressed before it is made short. */
const MADE_SHORT = 0.76;
/** Bytes of a file beside its code: names of what goes in and out. */
const NAMES = 150;
/** Bytes of script in the page itself, which wake the islands. */
const INLINE = 1500;
/** Share of its budget that a page should load at most, so that there is room for what is yet to come. */
const SHARE = 0.95;
/** Price of what is fetched by a call, as a share of what is loaded at once: it decides only where nothing else does. */
const LATER = 1e-5;
/** How often the files are cut, each time at the prices that the time before asks for. */
const ROUNDS = 60;
/** Price of what the wall loads before it is drawn: it should bring nothing else with it. */
const EARLY = 50;
/** Power by which a price rises where a page loads more than it should, and falls again where it loads less. */
const RISE = 1.6;

/** Bytes of files that are one, as they travel. */
const bytesOf = (chunks: Iterable<Chunk>): number =>
  gzipSync([...chunks].map(codeOf).join('')).length * MADE_SHORT + NAMES;

/** A page, with what it loads if nothing is in vain and all in one file, what it may load, and what it should. */
interface Wish {
  readonly page: Load;
  readonly need: number;
  readonly budget: number;
  readonly goal: number;
}

function wishOf(page: Load): Wish {
  const need = bytesOf(page.chunks);
  const budget = Math.min(...page.paths.map(scriptBudget)) - INLINE;
  const goal = Math.max(1.1 * need, Math.min(SHARE * budget, 1.1 * need + 10_000));
  return { page, need, budget, goal };
}

/** The same, and what was asked before is known. */
function remembering(): (chunks: readonly Chunk[]) => number {
  const known = new Map<string, number>();
  return (chunks) => {
    const key = chunks.map(({ fileName }) => fileName).join();
    const bytes = known.get(key) ?? bytesOf(chunks);
    known.set(key, bytes);
    return bytes;
  };
}

/** What a page loads of groups. */
function loadOf({ page }: Wish, groups: ReadonlyMap<Group, number>): number {
  let bytes = 0;
  for (const [{ loads }, own] of groups) if (loads.has(page)) bytes += own;
  return bytes;
}

/** Price of a page for a start, and at least: what a page loads is the dearer the nearer the page is to its budget in any case. */
const firstPrice = ({ need, budget }: Wish): number => need / budget;

function firstPrices(loads: readonly Load[], wishes: readonly Wish[]): Map<Load, number> {
  const prices = new Map(wishes.map((wish) => [wish.page, firstPrice(wish)]));
  for (const load of loads) {
    if (load.byCall) prices.set(load, LATER * load.paths.length);
    if (load.early) prices.set(load, EARLY);
  }
  return prices;
}

/**
 * The groups at which the page that is nearest to its budget is farthest from it. They are cut several times; a page that loads more
 * than it should then pays more for each byte the next time, and less where it loads less, so that heavy pages get few files and light
 * ones little in vain.
 */
function cutFor(all: readonly Group[], loads: readonly Load[]): readonly Group[] {
  const wishes = loads.filter(({ byCall, early }) => !byCall && !early).map(wishOf);
  const prices = firstPrices(loads, wishes);
  const sizeOf = remembering();
  const sharing = sharingPairs(all);
  let best = { groups: all, worst: Number.POSITIVE_INFINITY };
  for (let round = 0; round < ROUNDS; round++) {
    const groups = merged(all, prices, sharing);
    const sizes = new Map(groups.map((group) => [group, sizeOf(group.chunks)]));
    let worst = 0;
    for (const wish of wishes) {
      const load = loadOf(wish, sizes);
      worst = Math.max(worst, load / wish.budget);
      const price = (prices.get(wish.page) ?? 0) * (load / wish.goal) ** RISE;
      prices.set(wish.page, Math.max(firstPrice(wish), price));
    }
    if (worst < best.worst) best = { groups, worst };
  }
  return best.groups;
}

/** Whether a module is what fetches others by a call: a few letters, for which the script of a page should not load a file of islands. */
const isHelper = (module: string): boolean => module.includes('vite/preload-helper');

/** What a chunk is sorted by. Its own name ends in a hash, which is another one where the project lies elsewhere. */
const placeOf = ({ modules, fileName }: Chunk): string =>
  `${Object.keys(modules).sort()[0] ?? ''} ${fileName}`;

/**
 * Name of the file that each module of a bundle goes into, so that a page loads what it needs in few files and little in vain. The script
 * of a page stays in a file of its own: in a shared one it would run on every page that loads the file.
 */
export function fileOfModule(bundled: readonly Chunk[], pages: readonly Page[]): ReadonlyMap<string, string> {
  const inOrder = [...bundled].sort((a, b) => (placeOf(a) < placeOf(b) ? -1 : 1));
  const chunks = new Map(inOrder.map((chunk) => [chunk.fileName, chunk]));
  const loads = loadsOf(chunks, pages);
  return new Map(
    cutFor(groupsBySet(chunks, loads), loads).flatMap((group, index) =>
      group.chunks
        .filter((chunk) => !isPageScript(chunk))
        .flatMap(({ modules }) =>
          Object.keys(modules)
            .filter((module) => !isHelper(module))
            .map((module) => [module, `part-${index}`] as const),
        ),
    ),
  );
}
