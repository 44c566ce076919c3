/**
 * One step, in a process of its own: `count` counts which test reaches which mutant, `run` switches the mutants of a list on,
 * one after the other, while the tests that reach it run. The tests are loaded once for all of them; in `afresh` anew for each
 * mutant, so that what a file of tests or a module keeps for later is made with the mutant as well.
 *
 * What is kept for later can also outlive the mutant under which it was made, and then fails tests for no fault of the next one:
 * after each kill the test runs once more without mutant, and if it still fails the step ends, to go on in a new process.
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
  file: '',
  /** What loading the files of tests reaches, file by file. @type {{ file: string, reached: Reached[] }[]} */
  loaded: [],
  before: new Float64Array(0),
  /** @param {string} file */
  enter(file) {
    mutation.file = file;
    if (step === 'count') mutation.before = mutation.hits.slice();
  },
  leave() {
    if (step === 'count')
      mutation.loaded.push({ file: mutation.file, reached: reachedSince(mutation.before) });
  },
  /** How often the switch may still be passed until the mutant is taken to go round for ever. */
  left: 0,
  hit() {
    if (--mutation.left < 0) throw new Error('passed too often');
    return true;
  },
};
globalThis.mutation = mutation;
if (step !== 'afresh')
  await import(/* @vite-ignore */ resolve(work, step === 'count' ? 'counting.mjs' : 'plain.mjs'));

/** @typedef {{ id: number, times: number }} Reached */

/** @param {Float64Array} before @returns {Reached[]} */
function reachedSince(before) {
  return [...mutation.hits].flatMap((hits, id) => {
    const times = hits - (before[id] ?? 0);
    return times > 0 ? [{ id, times }] : [];
  });
}

/** How often each mutant is reached by loading alone, and by each test, with what each test takes. */
async function count() {
  const { tests, hits, loaded } = mutation;
  const none = new Float64Array(0);
  const loading = reachedSince(none);
  const perTest = [];
  for (const { name, file, run } of tests) {
    hits.fill(0);
    const start = performance.now();
    await run();
    perTest.push({ name, file, ms: performance.now() - start, reached: reachedSince(none) });
  }
  writeFileSync(resolve(work, 'coverage.json'), JSON.stringify({ loading, loaded, perTest }));
}

/** Says that a test begins, to whoever watches whether this goes on. */
const beat = out === '' ? -1 : openSync(`${out}.beat`, 'w');
let beats = 0;

/** @param {number} index */
async function runTest(index) {
  writeSync(beat, `${++beats}`, 0);
  await mutation.tests[index]?.run();
}

/** Whether a test that has just failed fails without mutant too. @param {number} index */
async function isSpoilt(index) {
  if (step === 'afresh') return false;
  mutation.active = -1;
  try {
    await runTest(index);
    return false;
  } catch {
    return true;
  }
}

/** Loads the tests with the mutant that is switched on. @param {number} id */
async function load(id) {
  writeSync(beat, `${++beats}`, 0);
  mutation.tests = [];
  await import(/* @vite-ignore */ `${resolve(work, 'plain.mjs')}?${id}`);
}

/** @param {import('./shares.mjs').Todo} mutant @returns {Promise<import('./shares.mjs').Fate & { spoilt?: true }>} */
async function fate({ id, indices, times }) {
  mutation.active = id;
  mutation.left = 100 * times + 1e5;
  let by = -1;
  try {
    if (step === 'afresh') await load(id);
    for (by of indices) await runTest(by);
  } catch {
    const status = mutation.left < 0 ? 'hung' : 'killed';
    return { id, status, ...((await isSpoilt(by)) && { spoilt: true }) };
  }
  return { id, status: 'survived' };
}

test('mutants', { timeout: 1e9 }, async () => {
  if (step === 'count') return count();
  for (const [index, mutant] of json(todo).entries()) {
    const { spoilt, ...found } = await fate(mutant);
    // The first one of a process has spoilt it by itself; with a later one it may have been another, so it is tried again.
    if (!spoilt || index === 0) appendFileSync(out, `${JSON.stringify(found)}\n`);
    if (spoilt) return;
  }
});
