import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import {
  type Comparison,
  type Counted,
  clubBlocks,
  type Known,
  STEEL_PPM,
} from '../../sheet/gauge-blocks.ts';

const KNOWN: Readonly<Record<Known, string>> = { nominal: 'n', grade: 'g', own: 'o', shared: 's' };
const COUNTED: Readonly<Record<Counted, string>> = { nothing: 'n', each: 'e' };

const club = clubBlocks();
const deviation = {
  type: 'number',
  kind: 'micrometres',
  min: -0.6,
  max: 0.6,
  step: 0.01,
  decimals: 2,
} as const;
const celsius = { type: 'number', kind: 'celsius', min: 15, max: 35, step: 0.1, decimals: 1 } as const;
const growth = { type: 'number', kind: 'growth', min: 0, max: 25, step: 0.1, decimals: 1 } as const;

const fields = {
  stackC: { ...celsius, key: 'ts', label: 'Temperature of the stack', default: club.stackC },
  singleC: { ...celsius, key: 'tb', label: 'Temperature of the single block', default: club.singleC },
  counted: { type: 'choice', key: 'wa', label: 'Warmth', choices: COUNTED, default: club.counted },
  known: { type: 'choice', key: 'kn', label: 'Counted of the blocks', choices: KNOWN, default: club.known },
  count: {
    type: 'number',
    key: 'n',
    label: 'Blocks in the stack',
    kind: 'number',
    min: 1,
    max: 4,
    step: 1,
    decimals: 0,
    whole: true,
    default: club.deviationsUm.length,
  },
  first: { ...deviation, key: 'a', label: 'First block: longer than nominal by', default: 0.12 },
  second: { ...deviation, key: 'b', label: 'Second block: longer by', default: -0.05 },
  third: { ...deviation, key: 'c', label: 'Third block: longer by', default: 0.08 },
  fourth: { ...deviation, key: 'd', label: 'Fourth block: longer by', default: 0.1 },
  single: { ...deviation, key: 'e', label: 'Single block: longer by', default: club.singleUm },
  off: {
    ...deviation,
    key: 'of',
    label: 'Every block of the set is longer than certified by',
    min: -0.15,
    max: 0.15,
    default: club.offUm,
  },
  stackPpm: { ...growth, key: 'gs', label: 'The stack grows in each kelvin by', default: STEEL_PPM },
  singlePpm: { ...growth, key: 'gb', label: 'The single block grows by', default: STEEL_PPM },
} as const;

/** What an address says about the blocks. */
export const blocksSpec = { version: 1, fields } as const satisfies AddressSpec;

export type BlocksFields = typeof fields;
export type BlocksState = StateOf<BlocksFields>;

/** Names of the deviations of a stack's blocks, from the first on. */
export const STACK_FIELDS = ['first', 'second', 'third', 'fourth'] as const;

/** The comparison of a state. */
export const comparisonOf = ({ count, single, off, ...rest }: BlocksState): Comparison => ({
  deviationsUm: STACK_FIELDS.slice(0, count).map((name) => rest[name]),
  singleUm: single,
  offUm: off,
  stackC: rest.stackC,
  singleC: rest.singleC,
  stackPpm: rest.stackPpm,
  singlePpm: rest.singlePpm,
  known: rest.known,
  counted: rest.counted,
});
