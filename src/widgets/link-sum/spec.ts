import type { AddressSpec, StateOf } from '../../address/field-spec.ts';
import { type Coverage, type LinkShape, type LinkSum, type Sizes, statedDb } from '../../sheet/link-sum.ts';

const SHAPES: Readonly<Record<LinkShape, string>> = {
  rectangular: 'r',
  triangular: 't',
  arcsine: 'u',
  normal: 'n',
};
const SIZES: Readonly<Record<Sizes, string>> = { stated: 'l', standard: 'u' };
const COVERAGES: Readonly<Record<Coverage, string>> = { two: '2', ninetyFive: '95' };

const size = {
  type: 'number',
  kind: 'halfWidthDb',
  min: 0.01,
  max: 10,
  step: 0.01,
  decimals: 2,
  default: 0.5,
} as const;
const shape = { type: 'choice', choices: SHAPES, default: 'rectangular' } as const;

const fields = {
  count: {
    type: 'number',
    key: 'n',
    label: 'Links in the sum',
    kind: 'number',
    min: 1,
    max: 5,
    step: 1,
    decimals: 0,
    whole: true,
    default: 1,
  },
  coverage: { type: 'choice', key: 'co', label: 'Intervals hold', choices: COVERAGES, default: 'two' },
  sizes: { type: 'choice', key: 'sz', label: 'Sizes below are', choices: SIZES, default: 'stated' },
  first: { ...size, key: 'a', label: 'First link' },
  firstShape: { ...shape, key: 'as', label: 'Shape of the first link' },
  second: { ...size, key: 'b', label: 'Second link' },
  secondShape: { ...shape, key: 'bs', label: 'Shape of the second link' },
  third: { ...size, key: 'c', label: 'Third link' },
  thirdShape: { ...shape, key: 'cs', label: 'Shape of the third link' },
  fourth: { ...size, key: 'd', label: 'Fourth link' },
  fourthShape: { ...shape, key: 'ds', label: 'Shape of the fourth link' },
  fifth: { ...size, key: 'e', label: 'Fifth link' },
  fifthShape: { ...shape, key: 'es', label: 'Shape of the fifth link' },
} as const;

/** What an address says about links that are added. */
export const linkSumSpec = { version: 1, fields } as const satisfies AddressSpec;

export type LinkSumFields = typeof fields;
export type LinkSumState = StateOf<LinkSumFields>;

/** Names of the links' sizes and of their shapes, from the first on. */
export const LINKS = [
  ['first', 'firstShape'],
  ['second', 'secondShape'],
  ['third', 'thirdShape'],
  ['fourth', 'fourthShape'],
  ['fifth', 'fifthShape'],
] as const;

/** The sum of a state. */
export const sumOf = (state: LinkSumState): LinkSum => ({
  links: LINKS.slice(0, state.count).map(([size, shape]) => ({ shape: state[shape], sizeDb: state[size] })),
  sizes: state.sizes,
  coverage: state.coverage,
});

/** What is stated of the first link, in dB: where its knob is. */
export const firstStatedDb = (state: LinkSumState): number =>
  statedDb({ shape: state.firstShape, sizeDb: state.first }, state.sizes);
