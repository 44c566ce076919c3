// What a lesson costs to build: copies of the site’s own lessons are added until there are as many as asked for, and the whole site is
// built with them, in processor seconds and peak memory. Long; Linux alone tells both. `node test/bench/build-cost.mjs 50 200 800`.
import { execFileSync, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { copyOfLesson, costPerLesson } from './lesson-copies.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const place = join(root, '.cache/cost');
/** Ticks of a processor’s clock in a second, as Linux tells them. */
const TICKS = 100;

/** A copy of the sources, with so many lessons. @param {number} count */
function prepare(count) {
  rmSync(place, { recursive: true, force: true });
  const files = execFileSync('git', ['ls-files', 'src', 'public', '*.json', '*.mjs'], {
    cwd: root,
    encoding: 'utf8',
  });
  const own = files
    .trim()
    .split('\n')
    .filter((file) => existsSync(join(root, file)));
  for (const file of own) {
    mkdirSync(dirname(join(place, file)), { recursive: true });
    cpSync(join(root, file), join(place, file));
  }
  symlinkSync(join(root, 'node_modules'), join(place, 'node_modules'));
  const lessons = own.filter((file) => /^src\/lessons\/[^/]+\/[^/]+\.mdx$/.test(file));
  for (let k = 0; k < count - lessons.length; k += 1) {
    const file = lessons[k % lessons.length] ?? '';
    const copied = copyOfLesson(readFileSync(join(root, file), 'utf8'), k + 1);
    writeFileSync(join(place, file.replace(/\.mdx$/, `-copy-${k + 1}.mdx`)), copied);
  }
}

/** Processor seconds and peak memory in MB of a process, as long as it lives. @param {number} pid */
function used(pid) {
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
  const [user, system] = stat
    .slice(stat.lastIndexOf(')') + 2)
    .split(' ')
    .slice(11, 13)
    .map(Number);
  const [, kilobytes] = /VmHWM:\s*(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
  if (kilobytes === undefined) throw new Error('used: wish a process that lives, got one that has ended');
  return { seconds: ((user ?? 0) + (system ?? 0)) / TICKS, megabytes: Number(kilobytes) / 1024 };
}

/** Builds, and tells what the process used last. @returns {Promise<{ seconds: number, megabytes: number }>} */
async function build() {
  const astro = join(root, 'node_modules/astro/bin/astro.mjs');
  const child = spawn(process.execPath, [astro, 'build', '--silent'], {
    cwd: place,
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', SITE_OUT: '.site', SITE_BASE: '/' },
  });
  let last = { seconds: Number.NaN, megabytes: Number.NaN };
  const timer = setInterval(() => {
    try {
      last = used(child.pid ?? 0);
    } catch {
      // it has ended: what it used a moment ago counts
    }
  }, 100);
  const code = await new Promise((resolve) => child.on('close', resolve));
  clearInterval(timer);
  if (code !== 0) throw new Error(`build cost: wish a build that succeeds, got ${code}`);
  return last;
}

const asked = process.argv.slice(2).map(Number);
const counts = asked.length > 0 ? asked : [50, 200, 800];
const all = [];
for (const lessons of counts) {
  prepare(lessons);
  all.push({ lessons, ...(await build()) });
  console.table(costPerLesson(all));
}
rmSync(place, { recursive: true, force: true });
