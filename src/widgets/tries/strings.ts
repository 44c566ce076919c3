import type { Trials, TriedModel } from '../../sheet/tries.ts';
import type { UnitName } from '../../text/units.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const models: Readonly<Record<TriedModel, string>> = {
  watts: 'Watts from volts across a load',
  phase: 'Reflections of unknown phase',
  loss: 'JCGM 101, 9.4: comparison loss of a power meter',
  weight: 'JCGM 101, 9.3: a weight, weighed in air',
  gauge: 'JCGM 101, 9.5: a gauge block',
};
const trials: Readonly<Record<Trials, string>> = {
  '100': 'A hundred',
  '1000': 'A thousand',
  '10000': 'Ten thousand',
  '100000': 'A hundred thousand',
  '1000000': 'A million',
  settled: 'Until two digits have settled',
};

/** Words of the trials. */
export const strings = {
  name: 'Trials as columns, and the bell that propagation makes of the same',
  description: (summary: string): string =>
    `Filled: how often each result came. Dashed: the bell of propagation. Below, on the same axis, both intervals. ${summary}`,
  up: 'how often, per unit',
  along: {
    watts: 'power, in mW',
    phase: 'error by reflections, in dB',
    loss: 'loss, in ppm',
    weight: 'deviation from 100 g, in mg',
    gauge: 'deviation from 50 mm, in nm',
  } satisfies Readonly<Record<TriedModel, string>>,
  units: {
    watts: 'mW',
    phase: 'dB',
    loss: 'ppm',
    weight: 'mg',
    gauge: 'nm',
  } satisfies Readonly<Record<TriedModel, UnitName>>,
  lanes: { tried: 'Trials', propagated: 'Propagation' },
  between: (lower: string, upper: string): string => `${lower} to ${upper}`,
  answers: {
    mean: ({ model, u, count }: { model: string; u: string; count: string }): string =>
      `${model}: mean of ${count} trials; standard uncertainty ${u}`,
    interval: {
      symmetric: (share: string): string => `the middle ${share} of the trials: the filled strip`,
      shortest: (share: string): string => `the shortest ${share} of the trials: the filled strip`,
    },
    propagated: ({ estimate, u, order }: { estimate: string; u: string; order: string }): string =>
      `propagation, ${order}: ${estimate}, standard uncertainty ${u}; the dashed outline`,
    order: { first: 'first order', second: 'second order too' },
    holds: 'Propagation will do',
    fails: 'Propagation will not do',
    few: 'Too few trials to judge',
    apart: ({ apart, allowed }: { apart: string; allowed: string }): string =>
      `its ends are up to ${apart} off; half a unit of the first digit of the uncertainty, ${allowed}, is allowed (JCGM 101, 8.1)`,
    fewWords: 'a hundred thousand, or results that have settled, are wanted to judge propagation by',
  },
  summary: ({ model, tried, propagated, verdict }: Readonly<Record<string, string>>): string =>
    `${model}. Trials: ${tried}. Propagation: ${propagated}. ${verdict}.`,
  run: {
    again: 'Try with other random numbers',
    stop: 'Stop',
    running: (count: string): string => `Trying; shown so far: ${count} trials.`,
    done: ({ count, seed }: { count: string; seed: string }): string =>
      `${count} trials, random numbers from seed ${seed}.`,
    settled: ({ count, seed, tolerance }: { count: string; seed: string; tolerance: string }): string =>
      `Settled to ${tolerance} after ${count} trials, random numbers from seed ${seed}.`,
    unsettled: ({ count }: { count: string }): string =>
      `Not settled after ${count} trials, the most that are made.`,
    stopped: (count: string): string => `Stopped; what is shown are ${count} trials.`,
    failed: (message: string): string => `The trials could not be made: ${message}`,
    noWorker: 'this browser does not allow a worker here',
  },
  settings: {
    caption: 'What is tried, and how often',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      model: models,
      trials,
      interval: { symmetric: 'As much cut off below as above', shortest: 'The shortest one' },
      coverage: { ninetyFive: '95 in a hundred', ninetyNine: '99 in a hundred' },
      order: { first: 'Slopes alone (first order)', second: 'Bends too (second order)' },
    },
    units: {
      voltsPercent: 'percent',
      ohmsPercent: 'percent',
      sourceSwr: 'none',
      meterSwr: 'none',
      reflection: 'none',
      correlation: 'none',
      seed: 'none',
    },
  } satisfies SettingsWords,
  more: 'Which interval, which propagation, which random numbers',
  note: 'The trials are made beside the page: a hundred first, then ten times as many each time. The same seed gives the same numbers again.',
  reset: 'Back to volts and a load',
  noScript:
    'Trying needs JavaScript; the figure and its numbers are those of a run that was made beforehand.',
} as const;
