import {
  type BandResult,
  checkStep,
  componentOf,
  dbToPowerRatio,
  type GainDb,
  gainDb,
  type Input,
  levelDbm,
  type MismatchMagnitudes,
  mismatchLimits,
  type OutOfRange,
  padsIntoMeter,
  rangeError,
  reflectionOfSwr,
  type StepCheck,
} from '#compute';
import { bandOf } from './band.ts';
import { clubSheet } from './club.ts';
import { limits } from './link.ts';

/** A transmitter measured through one pad and the club's coax, and what is known of the match at both ends. */
export interface PadsLine {
  readonly readingDbm: number;
  /** By how much less the meter shows with one more pad in front. */
  readonly movedDb: number;
  /** Attenuation of the pad; 0 is no pad at all. */
  readonly padDb: number;
  readonly padWithinDb: number;
  /** Standing-wave ratio that the pad itself shows at either end. */
  readonly padSwr: number;
  readonly sourceSwr: number;
  readonly meterSwr: number;
}

/** The further pad of the check, and how far its step may be off: its own limits, and the last digit of two readings. Invented. */
export const EXTRA_DB = 10;
export const EXTRA_ALLOWED_DB = 0.4;
/** Levels between which the meter that was lent holds. Invented. */
export const meterRange = () => ({ floor: levelDbm(-30), largest: levelDbm(20) });
/** What taking the connectors off and on again may change. */
const CONNECTORS_WITHIN_DB = 0.05;

/** The club's own line: its hidden transmitter through a pad of 20 dB. Every value is invented. */
export const clubPadsLine = (): PadsLine => ({
  readingDbm: 7,
  movedDb: 10,
  padDb: 20,
  padWithinDb: 0.5,
  padSwr: 1.15,
  sourceSwr: 1.5,
  meterSwr: 1.2,
});

/** A step on the edge of what is allowed passes: what differs from it by less than this, in dB, is rounding. */
const ROUNDING_DB = 1e-9;

/** Reflections of transmitter, pad and meter, their phases unknown. A perfect pad reflects nothing itself. */
export function magnitudesOf(line: PadsLine, pad: 'real' | 'perfect' = 'real'): MismatchMagnitudes {
  const ends = { source: reflectionOfSwr(line.sourceSwr), load: reflectionOfSwr(line.meterSwr) };
  if (line.padDb === 0) return ends;
  const own = pad === 'real' ? reflectionOfSwr(line.padSwr) : 0;
  return { ...ends, between: { input: own, output: own, gain: gainDb(-line.padDb) } };
}

/** Limits and standard uncertainty of the correction for mismatch. */
export interface Match {
  readonly lower: GainDb;
  readonly upper: GainDb;
  readonly standardUncertainty: number;
}

/** Decibels per unit of the magnitude of a small wave beside one of 1. */
const DB_PER_WAVE = 20 / Math.LN10;

/**
 * Standard uncertainty of the correction for mismatch, in dB: each wave that meets the direct one is U-shaped, so that its half-width
 * counts over root two. To first order in the waves: within 1 % of the exact one for everything that may be set here.
 */
function uncertaintyOf({ source, load, between }: MismatchMagnitudes): number {
  const through = source * load * (between ? dbToPowerRatio(between.gain) : 1);
  const waves = between ? [source * between.input, load * between.output, through] : [through];
  return (DB_PER_WAVE * Math.hypot(...waves)) / Math.SQRT2;
}

/** What mismatch may do to the power into an ideal load. */
export function matchOf(line: PadsLine): Match {
  const magnitudes = magnitudesOf(line);
  return { ...mismatchLimits(magnitudes), standardUncertainty: uncertaintyOf(magnitudes) };
}

/** Does one more pad move the reading by as much as it should? */
export const stepOf = ({ readingDbm, movedDb }: PadsLine): StepCheck =>
  checkStep({
    withoutDb: readingDbm,
    withDb: readingDbm - movedDb,
    stepDb: EXTRA_DB,
    allowedDb: EXTRA_ALLOWED_DB + ROUNDING_DB,
  });

const within = (id: string, halfWidth: number): Input =>
  componentOf({ id, statement: limits(halfWidth), unit: 'dB' });

/** Everything that the result may be wrong by: the club's chain with this pad, these reflections, and connectors. */
function partsOf(line: PadsLine): readonly Input[] {
  const links = clubSheet().links.filter(({ id }) => id !== 'mismatch' && id !== 'pad');
  return [
    ...links.map(({ id, statement }) => componentOf({ id, statement, unit: 'dB' })),
    componentOf({
      id: 'mismatch',
      statement: { form: 'standard', standardUncertainty: matchOf(line).standardUncertainty },
      unit: 'dB',
    }),
    within('connectors', CONNECTORS_WITHIN_DB),
    ...(line.padDb === 0 ? [] : [within('pad', line.padWithinDb)]),
  ];
}

const coaxLossDb = (): number => clubSheet().links.find(({ id }) => id === 'coax')?.lossDb ?? 0;

/** The level at the socket, or why there is none: the meter is out of its range, or one more pad did not move it as it should. */
export type PadsFound =
  | { readonly found: true; readonly result: BandResult }
  | { readonly found: false; readonly reason: OutOfRange | 'step' };

/** What the line says of the transmitter. */
export function foundOf(line: PadsLine): PadsFound {
  const outcome = padsIntoMeter({
    reading: levelDbm(line.readingDbm),
    corrections: [],
    gains: [gainDb(-line.padDb), gainDb(-coaxLossDb())],
    ...meterRange(),
    influences: [],
  });
  if (!outcome.inRange) return { found: false, reason: outcome.reason };
  if (stepOf(line).outcome !== 'passed') return { found: false, reason: 'step' };
  if (outcome.model.kind !== 'sum')
    throw rangeError({
      where: 'foundOf',
      wish: 'pads into a meter must give a sum',
      got: outcome.model.kind,
    });
  const inputs = partsOf(line);
  const model = { ...outcome.model, inputs, sensitivities: inputs.map(() => 1) };
  return { found: true, result: bandOf(model) };
}
