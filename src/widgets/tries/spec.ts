import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import { clubTry, type Trials, type TriedModel, type TryOrder } from '../../sheet/tries.ts';

const MODELS: Readonly<Record<TriedModel, string>> = {
  watts: 'w',
  phase: 'p',
  loss: 'l',
  weight: 'k',
  gauge: 'g',
};
const TRIALS_CODES: Readonly<Record<Trials, string>> = {
  '100': '2',
  '1000': '3',
  '10000': '4',
  '100000': '5',
  '1000000': '6',
  settled: 's',
};

const club = clubTry();
const percent = { type: 'number', kind: 'percent', min: 0.5, max: 25, step: 0.5, decimals: 1 } as const;
const swr = { type: 'number', kind: 'number', min: 1.1, max: 5, step: 0.1, decimals: 1 } as const;

const fields = {
  model: { type: 'choice', key: 'm', label: 'What is tried', choices: MODELS, default: club.model },
  voltsPercent: { ...percent, key: 'pv', label: 'Limits of the volts', default: club.voltsPercent },
  ohmsPercent: { ...percent, key: 'pr', label: 'Limits of the load', default: club.ohmsPercent },
  sourceSwr: { ...swr, key: 'ss', label: 'SWR of the transmitter', default: club.sourceSwr },
  meterSwr: { ...swr, key: 'sm', label: 'SWR of the meter', default: club.meterSwr },
  reflection: {
    type: 'number',
    key: 'x',
    label: 'Reflection, in thousandths',
    kind: 'number',
    min: 0,
    max: 50,
    step: 1,
    decimals: 0,
    default: club.reflection,
  },
  correlation: {
    type: 'number',
    key: 'r',
    label: 'Correlation of its two parts',
    kind: 'number',
    min: 0,
    max: 0.9,
    step: 0.1,
    decimals: 1,
    default: club.correlation,
  },
  trials: { type: 'choice', key: 'tr', label: 'Trials', choices: TRIALS_CODES, default: club.trials },
  interval: {
    type: 'choice',
    key: 'iv',
    label: 'Interval',
    choices: { symmetric: 'm', shortest: 's' },
    default: 'symmetric',
  },
  coverage: {
    type: 'choice',
    key: 'co',
    label: 'Intervals hold',
    choices: { ninetyFive: '95', ninetyNine: '99' },
    default: club.coverage,
  },
  order: {
    type: 'choice',
    key: 'or',
    label: 'Propagation counts',
    choices: { first: '1', second: '2' },
    default: club.order,
  },
  seed: {
    type: 'number',
    key: 'sd',
    label: 'Seed of the random numbers',
    kind: 'number',
    min: 1,
    max: 999,
    step: 1,
    decimals: 0,
    whole: true,
    default: club.seed,
  },
} as const;

/** What an address says about trials. */
export const triesSpec = { version: 1, fields } as const satisfies AddressSpec;

export type TriesFields = typeof fields;
export type TriesState = StateOf<TriesFields>;
export type IntervalKind = TriesState['interval'];

/** Fields that belong to one thing that is tried. */
export const OWN_FIELDS: Readonly<Record<TriedModel, readonly (keyof TriesFields)[]>> = {
  watts: ['voltsPercent', 'ohmsPercent'],
  phase: ['sourceSwr', 'meterSwr'],
  loss: ['reflection', 'correlation'],
  weight: [],
  gauge: [],
};

/** What a run is made from: what belongs to another thing stands as prepared, so that it makes no other order of the same. */
export function orderOf({ interval: _, ...state }: TriesState): TryOrder {
  const own = OWN_FIELDS[state.model];
  const others = Object.values(OWN_FIELDS)
    .flat()
    .filter((name) => !own.includes(name));
  const prepared = Object.entries(club).filter(([name]) => others.some((other) => other === name));
  return { ...state, ...Object.fromEntries(prepared) };
}
