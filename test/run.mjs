// The whole proof: types, lint, unit tests, build, checks on the built site, browser. `npm test`.
// A step runs even when an earlier one failed, unless it needs that one's result. The last line says how many checks held.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { stripVTControlCharacters } from 'node:util';
import { count, forget } from './run/count.ts';
import { steps } from './run/steps.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const most = 200 * 1024 * 1024;

/** @param {readonly string[]} command */
function run([program = '', ...args]) {
  const script = program.endsWith('.mjs');
  const [file, all] = script
    ? [process.execPath, [program, ...args]]
    : [`${root}node_modules/.bin/${program}`, args];
  const env = { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined, CI: '1' };
  const { status, stdout, stderr, error } = spawnSync(file, all, {
    cwd: root,
    env,
    encoding: 'utf8',
    maxBuffer: most,
  });
  const said = stripVTControlCharacters(`${stdout}\n${stderr}\n${error?.message ?? ''}`);
  return { endedWell: status === 0, said: said.trim().split('\n') };
}

/** @type {Set<string>} */
const bad = new Set();
const total = { passed: 0, failed: 0 };

for (const { name, command, kind, needs, shown } of steps) {
  const missing = needs?.filter((need) => bad.has(need)) ?? [];
  if (missing.length > 0) {
    console.log(`\n— ${name}: not run, for want of: ${missing.join(', ')}`);
    total.failed += 1;
    continue;
  }
  const start = performance.now();
  forget(kind, root);
  const { endedWell, said } = run(command);
  const { passed, failed } = count(kind, endedWell, root);
  total.passed += passed;
  total.failed += failed;
  if (failed > 0) bad.add(name);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`\n— ${name}: ${passed} passed, ${failed} failed, ${seconds} s`);
  const lines = failed > 0 ? said.slice(-300) : shown > 0 ? said.slice(-shown) : [];
  if (lines.length > 0) console.log(lines.join('\n'));
}

console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0;
