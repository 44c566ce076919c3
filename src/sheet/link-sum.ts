import {
  arcsine,
  type BandResult,
  type Distribution,
  normal,
  rectangular,
  type SumModel,
  triangular,
} from '#compute';
import { bandOf } from './band.ts';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from './coverage.ts';

/** Shapes that a link may have here. */
export const LINK_SHAPES = ['rectangular', 'triangular', 'arcsine', 'normal'] as const;
export type LinkShape = (typeof LINK_SHAPES)[number];

/** What the sizes of the links stand for: what a data sheet states, or the standard uncertainty itself. */
export const SIZES = ['stated', 'standard'] as const;
export type Sizes = (typeof SIZES)[number];

/** How much an interval is to hold: what two standard uncertainties of a bell hold, or 95 %. */
export const COVERAGES = ['two', 'ninetyFive'] as const;
export type Coverage = (typeof COVERAGES)[number];

/** One link of a chain: its shape, and its size in dB. */
export interface SizedLink {
  readonly shape: LinkShape;
  readonly sizeDb: number;
}

/** Links that are added, each independent of the others and even about nothing. */
export interface LinkSum {
  readonly links: readonly SizedLink[];
  readonly sizes: Sizes;
  readonly coverage: Coverage;
}

/** From a standard uncertainty to what is stated of the shape: limits to either side, or U with k = 2 for a bell. */
const STATED_OVER_STANDARD: Readonly<Record<LinkShape, number>> = {
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
  arcsine: Math.SQRT2,
  normal: COVERAGE_FACTOR,
};

/** What is stated of a link, in dB: limits, or an expanded uncertainty with k = 2. */
export const statedDb = ({ shape, sizeDb }: SizedLink, sizes: Sizes): number =>
  sizes === 'stated' ? sizeDb : sizeDb * STATED_OVER_STANDARD[shape];

/** The size of a link of which so much is stated, in dB. */
export const sizeOfStated = (stated: number, { shape }: SizedLink, sizes: Sizes): number =>
  sizes === 'stated' ? stated : stated / STATED_OVER_STANDARD[shape];

/** The distribution of one link, in dB. @throws RangeError unless its size is above zero. */
export function linkDistribution(link: SizedLink, sizes: Sizes): Distribution {
  const halfWidth = statedDb(link, sizes);
  const limits = { lower: -halfWidth, upper: halfWidth };
  switch (link.shape) {
    case 'rectangular':
      return rectangular(limits);
    case 'triangular':
      return triangular(limits);
    case 'arcsine':
      return arcsine({ centre: 0, halfWidth });
    case 'normal':
      return normal({ mean: 0, standardDeviation: halfWidth / COVERAGE_FACTOR });
  }
}

/** Four links of half a decibel each: pads, cables, whatever has limits and nothing more is known of. */
export const halfDecibels = (count: number): LinkSum => ({
  links: Array.from({ length: count }, () => ({ shape: 'rectangular', sizeDb: 0.5 })),
  sizes: 'stated',
  coverage: 'two',
});

/** The club's chain into a receiver: the receiver, two pads, a cable, and what reflections do. All of it is invented. */
export const receiverChain = (): LinkSum => ({
  links: [
    { shape: 'rectangular', sizeDb: 2 },
    { shape: 'rectangular', sizeDb: 0.5 },
    { shape: 'rectangular', sizeDb: 0.5 },
    { shape: 'rectangular', sizeDb: 0.1 },
    { shape: 'arcsine', sizeDb: 0.2 },
  ],
  sizes: 'stated',
  coverage: 'two',
});

/** The coverage probability that is asked for. */
export const probabilityOf = (coverage: Coverage): number =>
  coverage === 'two' ? COVERAGE_PROBABILITY : 0.95;

/** The sum as a model, in dB about nothing. */
export const sumModelOf = ({ links, sizes }: LinkSum): SumModel => ({
  kind: 'sum',
  constant: 0,
  inputs: links.map((link, index) => ({
    id: `link ${index + 1}`,
    distribution: linkDistribution(link, sizes),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  })),
  sensitivities: links.map(() => 1),
});

/** Worst case and propagation of the sum. @throws RangeError where a size is not above zero. */
export const bellOf = (sum: LinkSum): BandResult =>
  bandOf(sumModelOf(sum), { coverageProbability: probabilityOf(sum.coverage) });

/** A receiver that outweighs all that stands before it, in a chain that is long none the less. */
export const longChain = (): LinkSum => ({
  ...halfDecibels(1),
  links: [2, 0.1, 0.1, 0.1, 0.1].map((sizeDb) => ({ shape: 'rectangular', sizeDb })),
});

/** A bad match straight into a meter whose own limits are small: reflections decide nearly all. */
export const badMatch = (): LinkSum => ({
  ...halfDecibels(1),
  links: [
    { shape: 'arcsine', sizeDb: 0.9 },
    { shape: 'rectangular', sizeDb: 0.2 },
  ],
});

/** The receiver's chain once its receiver and its pads have been compared with something better. */
export function comparedChain(): LinkSum {
  const [, , , cable, mismatch] = receiverChain().links;
  const small = (sizeDb: number): SizedLink => ({ shape: 'rectangular', sizeDb });
  const rest = [cable, mismatch].filter((link) => link !== undefined);
  return { ...receiverChain(), links: [small(0.3), small(0.1), small(0.1), ...rest] };
}
