// The whole proof, step by step as `run/steps.ts` has it: `npm test`.
// A step runs even when an earlier one failed, unless it needs that one's result. The last line says how many checks held.
import { spawn } from 'node:child_process';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { stripVTControlCharacters } from 'node:util';
import { runBeside } from './run/beside.ts';
import { count, forget } from './run/count.ts';
import { steps } from './run/steps.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** @param {readonly string[]} command */
async function run([program = '', ...args]) {
  const script = program.endsWith('.mjs');
  const [file, all] = script
    ? [process.execPath, [program, ...args]]
    : [`${root}node_modules/.bin/${program}`, args];
  const env = { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined, CI: '1' };
  const child = spawn(file, all, { cwd: root, env, stdio: ['ignore', 'pipe', 'pipe'] });
  const [status, ...texts] = await Promise.all([
    new Promise((resolve) => {
      child.on('close', resolve).on('error', ({ message }) => resolve(message));
    }),
    text(child.stdout),
    text(child.stderr),
  ]);
  const said = stripVTControlCharacters([...texts, typeof status === 'string' ? status : ''].join('\n'));
  return { endedWell: status === 0, said: said.trim().split('\n') };
}

const total = { passed: 0, failed: 0 };

/** @param {import('./run/steps.ts').Step} step */
async function prove({ name, command, kind, shown }) {
  const start = performance.now();
  forget(kind, root);
  const { endedWell, said } = await run(command);
  const { passed, failed } = count(kind, endedWell, root);
  total.passed += passed;
  total.failed += failed;
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`\n— ${name}: ${passed} passed, ${failed} failed, ${seconds} s`);
  const lines = failed > 0 ? said.slice(-300) : shown > 0 ? said.slice(-shown) : [];
  if (lines.length > 0) console.log(lines.join('\n'));
  return failed === 0;
}

await runBeside(steps, prove, ({ name }, missing) => {
  console.log(`\n— ${name}: not run, for want of: ${missing.join(', ')}`);
  total.failed += 1;
});

console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0;
