import {
  type CorrectionLine,
  correctionLine,
  correctionOf,
  coverageOf,
  mean,
  pooledScatter,
  roundsOf,
  type Scatter,
  welchSatterthwaite,
} from '#compute';
import { COVERAGE_FACTOR, COVERAGE_PROBABILITY } from './coverage.ts';
import { combined, known, ofLimits, ofUShape, type Part } from './independent.ts';

/**
 * Levels in turn, lent meter, own, lent meter and so on, in dBm as typed; a source at four levels, from low to high. Invented, as is
 * all of this.
 */
export const CLUB_READINGS: readonly (readonly string[])[] = [
  ['-10.02', '-9.21', '-10.06', '-9.29', '-10.01', '-9.27', '-10.05'],
  ['-0.04', '0.69', '-0.01', '0.77', '0.02', '0.72', '-0.03'],
  ['7.35', '8.10', '7.32', '8.05', '7.38', '8.12', '7.36'],
  ['12.96', '13.58', '12.99', '13.66', '13.02', '13.65', '12.97'],
];

/** Limits in dB of what counts besides: a last digit that does not rest, the room's warmth, mismatch where the two are swapped. */
export const INFLUENCES = { resolution: 0.05, temperature: 0.1, mismatch: 0.1 } as const;
/** What the maker says that one's own meter drifts in a year at most, in dB. */
const DRIFT_DB_PER_YEAR = 0.1;

/** A reading of one's own meter, corrected by what was borrowed. */
export interface Borrowed {
  readonly readingDbm: number;
  /** Limits of the lent meter, in dB. */
  readonly lender: number;
  /** Months since the comparison. */
  readonly months: number;
  /** Whether the lender's part is counted whole, or divided by the root of the number of levels, which is a slip. */
  readonly shared: 'whole' | 'averaged';
}

/** The reading of the bench's demonstration, on the day of the comparison. */
export const clubBorrowed = (): Borrowed => ({
  readingDbm: 5.2,
  lender: 0.2,
  months: 0,
  shared: 'whole',
});

/** What the readings at one level say by themselves: without what all levels have in common. */
export interface BorrowedPlace {
  /** Mean of what one's own meter showed, in dBm. */
  readonly at: number;
  readonly correction: number;
  readonly ownUncertainty: number;
}

const rounds = () => CLUB_READINGS.map((readings) => roundsOf(readings.map(Number)));

/** Scatter of a single round, from all levels together. */
export const scatterOfRounds = (): Scatter =>
  pooledScatter(
    rounds().map((own) => ({
      standardDeviation: correctionOf(own).standardDeviation ?? Number.NaN,
      degreesOfFreedom: own.length - 1,
    })),
  );

/** Level by level the correction, and how well the readings alone give it. */
export const placesOf = (): readonly BorrowedPlace[] =>
  rounds().map((own) => {
    const { correction, driftHalfWidth } = correctionOf(own);
    const { standardDeviation } = scatterOfRounds();
    return {
      at: mean(own.map((round) => round.own)),
      correction,
      ownUncertainty: Math.hypot(
        standardDeviation / Math.sqrt(own.length),
        ofLimits(driftHalfWidth),
        ofLimits(INFLUENCES.resolution),
      ),
    };
  });

/** The line through the corrections, weighted by how well the readings give them. */
export const borrowedLine = (): CorrectionLine =>
  correctionLine(
    placesOf().map(({ at, correction, ownUncertainty }) => ({
      at,
      correction,
      standardUncertainty: ownUncertainty,
    })),
  );

/** A value with what makes it uncertain, put together at the usual coverage probability (GUM 5.1, G.4). */
export interface Found {
  readonly estimate: number;
  readonly parts: readonly Part[];
  readonly expanded: number;
}

function foundOf(estimate: number, parts: readonly Part[]): Found {
  const degreesOfFreedom = welchSatterthwaite(
    parts.map((part) => ({ ...part, contribution: part.standardUncertainty })),
  );
  const coverageProbability = COVERAGE_PROBABILITY;
  const { coverageFactor } = coverageOf({ coverageProbability, degreesOfFreedom });
  return { estimate, parts, expanded: coverageFactor * combined(parts) };
}

/** What all levels have in common: the lender first. */
function commonParts({ lender, shared }: Borrowed): readonly Part[] {
  const counted = shared === 'whole' ? lender : lender / Math.sqrt(CLUB_READINGS.length);
  return [
    known('lender', ofLimits(counted)),
    known('temperature', ofLimits(INFLUENCES.temperature)),
    known('mismatch', ofUShape(INFLUENCES.mismatch)),
  ];
}

/** Whether a reading lies between the levels that were compared. */
export function isCompared(readingDbm: number): boolean {
  const { lower, upper } = borrowedLine().range;
  return readingDbm >= lower && readingDbm <= upper;
}

/** The line at a reading, by the readings alone: nothing of the lender in it. @throws RangeError beyond the levels compared. */
export function readingsAlone({ readingDbm }: Pick<Borrowed, 'readingDbm'>): Found {
  if (!isCompared(readingDbm))
    throw new RangeError(`readingsAlone: the reading must lie within the levels, got ${readingDbm}`);
  const { correction, slope, middle, correctionUncertainty, slopeUncertainty, degreesOfFreedom } =
    borrowedLine();
  const arm = readingDbm - middle;
  const standardUncertainty = Math.hypot(correctionUncertainty, arm * slopeUncertainty);
  return foundOf(correction + slope * arm, [{ id: 'line', standardUncertainty, degreesOfFreedom }]);
}

/** The correction by the line, with all that makes it uncertain. @throws RangeError beyond the levels that were compared. */
export function correctionFor(of: Borrowed): Found {
  const { estimate, parts } = readingsAlone(of);
  return foundOf(estimate, [...parts, ...commonParts(of)]);
}

/** The reading, corrected, with its own scatter, resolution, warmth and mismatch, and drift since. @throws RangeError as above. */
export function laterResult(of: Borrowed): Found {
  const { standardDeviation: standardUncertainty, degreesOfFreedom } = scatterOfRounds();
  const { estimate, parts } = correctionFor(of);
  return foundOf(of.readingDbm + estimate, [
    ...parts,
    { id: 'later scatter', standardUncertainty, degreesOfFreedom },
    known('later resolution', ofLimits(INFLUENCES.resolution)),
    known('later temperature', ofLimits(INFLUENCES.temperature)),
    known('later mismatch', ofUShape(INFLUENCES.mismatch)),
    known('drift', ofLimits((DRIFT_DB_PER_YEAR * of.months) / 12)),
  ]);
}

/** What the lender's statement alone comes to, k = 2: no result borrowed from it can be better. */
export const lenderExpanded = ({ lender }: Pick<Borrowed, 'lender'>): number =>
  COVERAGE_FACTOR * ofLimits(lender);
