/**
 * @typedef {{ id: number, indices: number[], times: number }} Todo a mutant, the tests that reach it, and how often
 * @typedef {{ id: number, status: 'killed' | 'hung' | 'survived' }} Fate
 * @typedef {{ todo: readonly Todo[], runs: number, kind?: 'run' | 'afresh' }} Work random cases a property; whether to load anew
 */
import { spawn } from 'node:child_process';
import { appendFileSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { jsonLines, root, work } from './files.mjs';

const WORKERS = Number(process.env.MUTANTS_WORKERS ?? availableParallelism());
/** Longest time in which no test ends, in seconds of the processor: then the mutant goes round for ever where no switch counts. */
const PATIENCE_S = 45;
/** Ticks of the processor's clock in a second, as Linux counts them for programs. */
const TICKS_PER_S = 100;

/** Fields of a process's line behind its name: group, time in its own code, time in the system's. @param {string} line */
function timesOf(line) {
  const fields = line.slice(line.lastIndexOf(')') + 2).split(' ');
  return { group: Number(fields[2]), ticks: Number(fields[11]) + Number(fields[12]) };
}

/**
 * Processor time that a group of processes has taken so far, in seconds: on a busy machine the clock on the wall says nothing. Where
 * the system does not tell it, the wall's clock has to do.
 * @param {number} group
 */
export function secondsOf(group) {
  if (!existsSync('/proc/self/stat')) return Date.now() / 1000;
  let ticks = 0;
  for (const name of readdirSync('/proc').filter((each) => /^\d+$/.test(each))) {
    try {
      const times = timesOf(readFileSync(`/proc/${name}/stat`, 'utf8'));
      if (times.group === group) ticks += times.ticks;
    } catch {
      // it has just ended
    }
  }
  return ticks / TICKS_PER_S;
}

/**
 * Runs one step in a process of its own; `stalled` may end it.
 * @param {Record<string, string>} env
 * @param {(group: number) => boolean} stalled
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
  const watch = setInterval(() => child.pid !== undefined && stalled(child.pid) && end(), 1000);
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
  let [seen, since] = ['', 0];
  return (/** @type {number} */ group) => {
    const now = existsSync(path) ? readFileSync(path, 'utf8') : '';
    const seconds = secondsOf(group);
    if (now !== seen) [seen, since] = [now, seconds];
    return seconds - since > PATIENCE_S;
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
