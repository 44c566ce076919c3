/**
 * How fast the computation is here: medians of processor time in milliseconds and ratios, as a table. Informs, never fails: machines differ
 * and share their processors. numpy, if a python3 that has it is found, does the same side by side in the same run.
 *
 * Run: npm run bench
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { measures } from './measures.ts';
import { median } from './median.ts';

const PYTHONS = ['python3', '/usr/bin/python3', 'python'];
const ROUNDS = 7;

/** Medians that numpy reaches, in ms by name; undefined where no python3 with numpy is found. */
function numpyMedians() {
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
  for (let k = 0; k < 3; k++) run();
  const samples = Array.from({ length: ROUNDS }, () => {
    const start = processorMs();
    for (let k = 0; k < times; k++) run();
    return (processorMs() - start) / times;
  });
  return median(samples);
}

const numpy = numpyMedians();
const medians = new Map(measures().map((measure) => [measure.name, medianMs(measure)]));
/** @param {string} name */
const ms = (name) => medians.get(name) ?? Number.NaN;

console.table(
  measures().map(({ name, like }) => {
    const other = like === undefined ? undefined : numpy?.[like];
    return {
      what: name,
      'median ms': Number(ms(name).toPrecision(3)),
      'numpy ms': other === undefined ? '' : Number(other.toPrecision(3)),
      'ratio to numpy': other === undefined ? '' : Number((ms(name) / other).toPrecision(2)),
    };
  }),
);
const numpyTrials = numpy?.['1e6 trials, 8 inputs'];
const tenParts = ms('whole distribution, 10 parts');
console.log(
  numpy === undefined
    ? 'No python3 with numpy was found: ratios are left out.'
    : `numpy ${numpy.version}, python ${numpy.python}; a million trials there take ${(numpyTrials / tenParts).toFixed(0)} times as long as the whole distribution of 10 parts.`,
);
console.log(
  `node ${process.version}, medians of ${ROUNDS} rounds of processor time. Four times as many parts take ${(ms('whole distribution, 40 parts') / tenParts).toFixed(1)} times as long, four times as many trials ${(ms('4e6 trials, 8 inputs') / ms('1e6 trials, 8 inputs')).toFixed(1)} times.`,
);
