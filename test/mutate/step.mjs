/**
 * One step, in a process of its own: `count` counts which test reaches which mutant, `run` switches the mutants of a list on,
 * one after the other, while the tests that reach it run. The tests are loaded once for all of them.
 */
import { appendFileSync, openSync, writeFileSync, writeSync } from 'node:fs';
import { resolve } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { json, work } from './files.mjs';

const {
  MUTANTS_STEP: step,
  MUTANTS_RUNS: runs,
  MUTANTS_OUT: out = '',
  MUTANTS_TODO: todo = '',
} = process.env;
fc.configureGlobal({ seed: 50, endOnFailure: true, numRuns: Number(runs) });
/** @type {import('./mutant.ts').Mutant[]} */
const mutants = json(resolve(work, 'mutants.json'));

const mutation = {
  expect,
  /** @type {import('./collect.mjs').Collected[]} */
  tests: [],
  hits: new Float64Array(1 + Math.max(...mutants.map(({ id }) => id))),
  active: -1,
  /** How often the switch may still be passed until the mutant is taken to go round for ever. */
  left: 0,
  hit() {
    if (--mutation.left < 0) throw new Error('passed too often');
    return true;
  },
};
globalThis.mutation = mutation;
await import(/* @vite-ignore */ resolve(work, step === 'count' ? 'counting.mjs' : 'plain.mjs'));
const { tests, hits } = mutation;

/** How often each mutant is reached by loading alone, and by each test, with what each test takes. */
async function count() {
  const reached = () => [...hits].flatMap((times, id) => (times > 0 ? [{ id, times }] : []));
  const loading = reached();
  const perTest = [];
  for (const { name, run } of tests) {
    hits.fill(0);
    const start = performance.now();
    await run();
    perTest.push({ name, ms: performance.now() - start, reached: reached() });
  }
  writeFileSync(resolve(work, 'coverage.json'), JSON.stringify({ loading, perTest }));
}

/** Says that a test begins, to whoever watches whether this goes on. */
const beat = out === '' ? -1 : openSync(`${out}.beat`, 'w');
let beats = 0;

/** @param {import('./shares.mjs').Todo} mutant @returns {Promise<import('./shares.mjs').Fate>} */
async function fate({ id, indices, times }) {
  mutation.active = id;
  mutation.left = 100 * times + 1e5;
  for (const index of indices) {
    writeSync(beat, `${++beats}`, 0);
    try {
      await tests[index]?.run();
    } catch {
      return { id, status: mutation.left < 0 ? 'hung' : 'killed' };
    }
  }
  return { id, status: 'survived' };
}

test('mutants', { timeout: 1e9 }, async () => {
  if (step === 'count') return count();
  for (const mutant of json(todo)) appendFileSync(out, `${JSON.stringify(await fate(mutant))}\n`);
});
