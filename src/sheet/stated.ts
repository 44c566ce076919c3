import { componentOf, type Distribution, type Statement } from '#compute';

/** What a paper may say about one part with one and the same number behind its ±. */
export const MEANINGS = ['nothing', 'plateau', 'middle', 'wave', 'certificate'] as const;
export type Meaning = (typeof MEANINGS)[number];

/** What somebody takes that number for without reading further. */
export const SLIPS = ['none', 'asStandard', 'asExpanded', 'rootThree'] as const;
export type StatedSlip = (typeof SLIPS)[number];

/** A number behind a ±, in dB, with what the paper means by it and what somebody makes of it. */
export interface Stated {
  readonly meaning: Meaning;
  readonly halfWidthDb: number;
  readonly slip: StatedSlip;
}

/** The limits of the club's pad, of which its data sheet says nothing else. Invented, as is all of this. */
export const clubPad = (): Stated => ({ meaning: 'nothing', halfWidthDb: 0.5, slip: 'none' });

/** The coverage factor that the certificates of this site state. */
export const CERTIFICATE_FACTOR = 2;
/** Width of the flat top of a trapezoid over that of its foot. */
export const PLATEAU = 0.5;

const STATEMENTS: Readonly<Record<Meaning, (halfWidth: number) => Statement>> = {
  nothing: (halfWidth) => ({ form: 'limits', shape: 'rectangular', halfWidth }),
  plateau: (halfWidth) => ({ form: 'trapezoid', halfWidth, topRatio: PLATEAU }),
  middle: (halfWidth) => ({ form: 'limits', shape: 'triangular', halfWidth }),
  wave: (halfWidth) => ({ form: 'limits', shape: 'arcsine', halfWidth }),
  certificate: (expanded) => ({ form: 'expanded', expanded, coverageFactor: CERTIFICATE_FACTOR }),
};

/** The distribution that a statement stands for, in dB. @throws RangeError unless its half-width is finite and >= 0. */
export const shapeOf = ({ meaning, halfWidthDb }: Stated): Distribution =>
  componentOf({ id: meaning, statement: STATEMENTS[meaning](halfWidthDb), unit: 'dB' }).distribution;

/** The standard uncertainty of a statement, in dB. */
export function standardDb(of: Stated): number {
  const { standardDeviation } = shapeOf(of);
  if (standardDeviation === undefined)
    throw new RangeError(`standardDb: the shape must have a standard deviation, got ${of.meaning}`);
  return standardDeviation;
}

/** What the stated number is divided by to give the standard uncertainty. */
export const divisorOf = (of: Stated): number => of.halfWidthDb / standardDb(of);

/** What each slip divides by, whatever the paper means. */
const SAID_DIVISOR: Readonly<Record<Exclude<StatedSlip, 'none'>, number>> = {
  asStandard: 1,
  asExpanded: CERTIFICATE_FACTOR,
  rootThree: Math.sqrt(3),
};

/** The standard uncertainty that somebody claims who makes the slip, in dB; none without one. */
export const saidDb = ({ slip, halfWidthDb }: Stated): number | undefined =>
  slip === 'none' ? undefined : halfWidthDb / SAID_DIVISOR[slip];

/** Share of the values within so many standard uncertainties of the middle, 0 to 1. */
export function shareWithin(of: Stated, factor: number): number {
  const { shareBelow } = shapeOf(of);
  const reach = factor * standardDb(of);
  return shareBelow(reach) - shareBelow(-reach);
}

/**
 * How hard a thin bar is to twirl about its middle whose weight of 1 lies as the values do: the sum of weight times squared
 * distance, in dB². Two lumps of half the weight each are as hard to twirl at the standard uncertainty, whence its other name,
 * radius of gyration. Summed piece by piece, so that it stands for itself.
 */
export function hardToTwirl(of: Stated, pieces = 4000): number {
  const { shareBelow, quantile } = shapeOf(of);
  const reach = Math.max(of.halfWidthDb, quantile(1 - 1e-9));
  let sum = 0;
  for (let piece = 0; piece < pieces; piece++) {
    const from = -reach + (2 * reach * piece) / pieces;
    const to = from + (2 * reach) / pieces;
    sum += (shareBelow(to) - shareBelow(from)) * ((from + to) / 2) ** 2;
  }
  return sum;
}
