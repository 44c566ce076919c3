/**
 * @typedef {{ id: number, indices: number[], times: number }} Todo a mutant, the tests that reach it, and how often
 * @typedef {{ id: number, status: 'killed' | 'hung' | 'survived' }} Fate
 * @typedef {{ todo: readonly Todo[], runs: number, kind?: 'run' | 'afresh' }} Work random cases a property; whether to load anew
 */
import { spawn } from 'node:child_process';
import { appendFileSync, existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { jsonLines, root, work } from './files.mjs';

const WORKERS = Number(process.env.MUTANTS_WORKERS ?? availableParallelism());
/** Longest time in which no test ends, in ms: then the mutant goes round for ever where no switch counts. */
const PATIENCE_MS = 30_000;

/**
 * Runs one step in a process of its own; `stalled` may end it.
 * @param {Record<string, string>} env
 */
export function step(env, stalled = () => false) {
  const args = ['run', '--config', resolve(import.meta.dirname, 'vitest.config.mjs')];
  const child = spawn(resolve(root, 'node_modules/.bin/vitest'), args, {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true,
  });
  const end = () => {
    if (child.pid !== undefined && child.exitCode === null) process.kill(-child.pid, 'SIGKILL');
  };
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (data) => {
      said += data;
    });
  const watch = setInterval(() => stalled() && end(), 1000);
  process.once('exit', end);
  return new Promise((/** @type {(result: { code: number | null, said: string }) => void} */ done) =>
    child.on('close', (code) => {
      clearInterval(watch);
      process.off('exit', end);
      done({ code, said });
    }),
  );
}

/** Whether the text of a file has stayed the same for too long. @param {string} path */
function stall(path) {
  let [seen, since] = ['', Date.now()];
  return () => {
    const now = existsSync(path) ? readFileSync(path, 'utf8') : '';
    if (now !== seen) [seen, since] = [now, Date.now()];
    return Date.now() - since > PATIENCE_MS;
  };
}

/**
 * The fates of one share of the mutants; a process that stands still is ended and the next begins behind its mutant.
 * @param {Work & { name: string }} share
 * @returns {Promise<Fate[]>}
 */
async function share({ name, todo, runs, kind = 'run' }) {
  const [out, list] = [resolve(work, `${name}.out`), resolve(work, `${name}.todo`)];
  rmSync(out, { force: true });
  for (let left = todo; left.length > 0; left = todo.slice(jsonLines(out).length)) {
    writeFileSync(list, JSON.stringify(left));
    const env = { MUTANTS_STEP: kind, MUTANTS_RUNS: `${runs}`, MUTANTS_TODO: list, MUTANTS_OUT: out };
    const { code } = await step(env, stall(`${out}.beat`));
    const stopped = todo[jsonLines(out).length];
    // A step that ends in peace before its list does goes on in a new process.
    if (code !== 0 && stopped !== undefined)
      appendFileSync(out, `${JSON.stringify({ id: stopped.id, status: 'hung' })}\n`);
  }
  return jsonLines(out);
}

/** @param {Work} work @returns {Promise<Fate[]>} */
export async function fatesOf({ todo, ...how }) {
  const shares = Array.from({ length: WORKERS }, (_, k) =>
    share({ name: `share${k}`, todo: todo.filter((_, index) => index % WORKERS === k), ...how }),
  );
  return (await Promise.all(shares)).flat();
}
