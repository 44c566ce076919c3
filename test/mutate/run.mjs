/**
 * Mutation tests over the computation: every mutant is run against the tests that reach it; those that survive are listed,
 * with the reason where `survivors.ts` has one. What was found earlier in files that are not run stays in the report.
 *
 * Run: npm run mutate, or npm run mutate -- src/compute/level for the files that begin so
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { json, report as reportPath, root, work } from './files.mjs';
import { instrument } from './instrument.mjs';
import { explanationOf, spanOf } from './mutant.ts';
import { fatesOf, step } from './shares.mjs';
import { idleLines, lastLine, survivorLines, table } from './summary.mjs';
import { survivors } from './survivors.ts';

/** Random cases of a property: few kill most; only what survives them faces as many as the tests draw by themselves. */
const FEW = 15;
const ALL = 100;

const wanted = process.argv.slice(2);
/** @param {{ file: string }} mutant */
const isWanted = ({ file }) => wanted.length === 0 || wanted.some((start) => file.startsWith(start));

/** @param {readonly import('./mutant.ts').Mutant[]} mutants */
function reachOf(mutants) {
  const { loading, perTest } = json(resolve(work, 'coverage.json'));
  /** @type {Map<number, { index: number, ms: number, times: number }[]>} */
  const reach = new Map(mutants.map(({ id }) => [id, []]));
  for (const [index, { ms, reached }] of perTest.entries())
    for (const { id, times } of reached) reach.get(id)?.push({ index, ms, times });
  const todo = [...reach].flatMap(([id, tests]) => {
    if (tests.length === 0) return [];
    const sorted = tests.toSorted((a, b) => a.ms - b.ms);
    return [
      {
        id,
        indices: sorted.map(({ index }) => index),
        times: Math.max(...sorted.map(({ times }) => times)),
      },
    ];
  });
  return { todo, atLoading: new Set(loading.map((/** @type {{ id: number }} */ { id }) => id)) };
}

/**
 * For each mutant the tests that reach it, and all tests of those files whose loading does (what they compute once for several tests).
 * @param {readonly import('./mutant.ts').Mutant[]} mutants @param {readonly import('./shares.mjs').Todo[]} todo
 */
function afresh(mutants, todo) {
  const { loaded, perTest } = json(resolve(work, 'coverage.json'));
  const byId = new Map(todo.map((each) => [each.id, each]));
  for (const { file, reached } of loaded) {
    const indices = [...perTest.keys()].filter((index) => perTest[index].file === file);
    for (const { id, times } of reached) {
      const before = byId.get(id) ?? { id, indices: [], times: 0 };
      byId.set(id, {
        id,
        indices: [...new Set([...before.indices, ...indices])],
        times: before.times + times,
      });
    }
  }
  return mutants.flatMap(({ id }) => byId.get(id) ?? []);
}

/** @param {readonly import('./shares.mjs').Todo[]} todo */
async function inPasses(todo) {
  const first = await fatesOf({ todo, runs: FEW });
  const survived = new Set(first.filter(({ status }) => status === 'survived').map(({ id }) => id));
  console.log(`${survived.size} survive ${FEW} random cases a property; they face ${ALL}`);
  const second = await fatesOf({ todo: todo.filter(({ id }) => survived.has(id)), runs: ALL });
  const fates = new Map([...first, ...second].map(({ id, status }) => [id, status]));
  const open = afresh(mutants, todo).filter(({ id }) => (fates.get(id) ?? 'survived') === 'survived');
  console.log(`${open.length} are left; they are tried with tests loaded afresh`);
  for (const { id, status } of await fatesOf({ todo: open, runs: ALL, kind: 'afresh' }))
    fates.set(id, status);
  return fates;
}

function commit() {
  const git = (/** @type {string[]} */ ...args) =>
    execFileSync('git', args, { cwd: root, encoding: 'utf8' }).trim();
  const changed = git('status', '--porcelain', '--', 'src/compute', 'test') !== '';
  return `${git('rev-parse', '--short', 'HEAD')}${changed ? ' and changes' : ''}`;
}

/** @param {readonly import('./mutant.ts').Judged[]} judged */
function byFile(judged) {
  /** @type {Record<string, { commit: string, mutants: import('./mutant.ts').Judged[] }>} */
  const files = {};
  for (const mutant of judged) {
    files[mutant.file] ??= { commit: begunAt, mutants: [] };
    files[mutant.file]?.mutants.push(mutant);
  }
  return files;
}

// Whatever ends this ends the steps it has begun.
for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => process.exit(1));

const begunAt = commit();
const mutants = (await instrument()).filter(isWanted);
/** As they are now: whoever waits for the run may go on working. */
const texts = new Map(mutants.map(({ file }) => [file, readFileSync(resolve(root, file), 'utf8')]));
const counted = await step({ MUTANTS_STEP: 'count', MUTANTS_RUNS: `${ALL}` });
if (counted.code !== 0) throw new Error(`mutate: the tests must pass unmutated\n${counted.said}`);
const { todo, atLoading } = reachOf(mutants);
console.log(`${todo.length} of ${mutants.length} mutants are reached by tests`);
const fates = await inPasses(todo);

/** @param {import('./mutant.ts').Mutant} mutant @returns {import('./mutant.ts').Judged} */
function judge(mutant) {
  const text = texts.get(mutant.file) ?? '';
  const { from, to } = spanOf(mutant, text);
  const status = fates.get(mutant.id) ?? (atLoading.has(mutant.id) ? 'constant' : 'unreached');
  const survived = status === 'survived' || status === 'unreached';
  const reason = survived ? explanationOf(mutant, text, survivors)?.reason : undefined;
  return { ...mutant, status, original: text.slice(from, to), ...(reason !== undefined && { reason }) };
}

const found = byFile(mutants.map(judge));
const earlier = existsSync(reportPath) ? json(reportPath) : {};
mkdirSync(dirname(reportPath), { recursive: true });
const report = wanted.length === 0 ? found : { ...earlier, ...found };
writeFileSync(reportPath, JSON.stringify(report, undefined, 1));
for (const line of [...survivorLines(found), ...idleLines(found, survivors)]) console.log(line);
console.table(table(found));
console.log(lastLine(found));
if (wanted.length > 0) console.log(`With what was found earlier: ${lastLine(report)}`);
