/**
 * How fast the computation is here: medians of processor time in milliseconds and ratios, as a table. Informs, never fails: machines differ
 * and share their processors. numpy, if a python3 that has it is found, does the same side by side: both take turns, so that
 * whatever else the machine does weighs on both alike.
 *
 * Run: npm run bench
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { audit } from './audit.mjs';
import { benchDrag } from './drag.mjs';
import { FOUR_MILLION, MILLION, measures, TEN_PARTS } from './measures.ts';
import { median } from './median.ts';
import { benchPage } from './page.mjs';

const PYTHONS = ['python3', '/usr/bin/python3', 'python'];
const TURNS = 5;
const ROUNDS = 3;

/** Medians of one turn of numpy, in ms by name; undefined where no python3 with numpy is found. */
function numpyTurn() {
  const program = fileURLToPath(new URL('numpy_same.py', import.meta.url));
  for (const python of PYTHONS) {
    const { status, stdout } = spawnSync(python, [program, String(ROUNDS)], { encoding: 'utf8' });
    if (status === 0) return JSON.parse(stdout);
  }
  return undefined;
}

/** Processor time of this process so far, in ms: other programs on the machine hardly touch it, unlike the clock. */
function processorMs() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** @param {import('./measures.ts').Measure} measure */
function medianMs({ run, times = 1 }) {
  run();
  const samples = Array.from({ length: ROUNDS }, () => {
    const start = processorMs();
    for (let k = 0; k < times; k++) run();
    return (processorMs() - start) / times;
  });
  return median(samples);
}

// Once in vain, until the code is compiled.
for (const measure of measures()) medianMs(measure);
const turns = Array.from({ length: TURNS }, () => ({
  numpy: numpyTurn(),
  own: new Map(measures().map((measure) => [measure.name, medianMs(measure)])),
}));
const numpy = turns[0]?.numpy;

/** @param {string} name */
const ms = (name) => median(turns.map(({ own }) => own.get(name) ?? Number.NaN));
/** @param {string} name */
const numpyMs = (name) => median(turns.map((turn) => turn.numpy[name]));
/** Of the two in the same turn. @param {string} name @param {string} like */
const ratios = (name, like) => turns.map((turn) => (turn.own.get(name) ?? Number.NaN) / turn.numpy[like]);
/** @param {number} value @param {number} digits */
const rounded = (value, digits) => Number(value.toPrecision(digits));

console.table(
  measures().map(({ name, like }) => {
    const compared = numpy !== undefined && like !== undefined;
    const all = compared ? ratios(name, like) : [];
    return {
      what: name,
      'median ms': rounded(ms(name), 3),
      'numpy ms': compared ? rounded(numpyMs(like), 3) : '',
      'ratio to numpy': compared ? rounded(median(all), 2) : '',
      'from … to': compared ? `${rounded(Math.min(...all), 2)} … ${rounded(Math.max(...all), 2)}` : '',
    };
  }),
);
console.log(
  numpy === undefined
    ? 'No python3 with numpy was found: ratios are left out.'
    : `numpy ${numpy.version}, python ${numpy.python}; a million trials there take ${(numpyMs(MILLION) / ms(TEN_PARTS)).toFixed(0)} times as long as the whole distribution of 10 parts.`,
);
console.log(
  `node ${process.version}, medians of ${TURNS} turns of ${ROUNDS} rounds of processor time. Four times as many parts take ${(ms('whole distribution, 40 parts') / ms(TEN_PARTS)).toFixed(1)} times as long, four times as many trials ${(ms(FOUR_MILLION) / ms(MILLION)).toFixed(1)} times.`,
);
await benchPage();
await benchDrag();
await audit();
