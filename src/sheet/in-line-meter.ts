import {
  type BandResult,
  gainDb,
  type Influence,
  inLineLevel,
  inLineReflection,
  type OutOfRange,
  powerW,
  type RelativeUnit,
  rangeError,
  type ScaleReading,
  swrOfReflection,
} from '#compute';
import { bandOf } from './band.ts';
import { limits, uShaped } from './link.ts';

/** What is wanted of the line: the wave towards the load, or what stays in it. */
export type Wanted = 'net' | 'incident';

/** A directional meter in the line, with both needles on one scale. */
export interface InLineUse {
  readonly forwardW: number;
  readonly reflectedW: number;
  readonly fullScaleW: number;
  readonly percentOfFullScale: number;
  readonly directivityDb: number;
  readonly wanted: Wanted;
}

/** The club's transmitter on a meter with a scale of 1 W. Every value is invented. */
export const clubInLine = (): InLineUse => ({
  forwardW: 0.51,
  reflectedW: 0.01,
  fullScaleW: 1,
  percentOfFullScale: 5,
  directivityDb: 25,
  wanted: 'net',
});

/** What else the reading may be wrong by, as the bench assumes it: frequency response, directivity, and reading the needle. */
export const otherParts = (): readonly Influence<RelativeUnit>[] => [
  { id: 'response', statement: limits(0.2), unit: 'dB' },
  { id: 'directivity', statement: uShaped(0.1), unit: 'dB' },
  { id: 'needle', statement: limits(2), unit: 'percentOfPower' },
];

/** Why there is no number: the method's own reason, a needle beyond its scale, or more coming back than going out. */
export type NoReading = OutOfRange | 'offScale' | 'turnedRound';

const onScale = (use: InLineUse, power: number): ScaleReading => ({
  power: powerW(power),
  fullScale: powerW(use.fullScaleW),
  percentOfFullScale: use.percentOfFullScale,
});

/** Why neither needle can be read as it stands, if so. */
export function unreadable({
  forwardW,
  reflectedW,
  fullScaleW,
}: InLineUse): 'offScale' | 'turnedRound' | undefined {
  if (Math.max(forwardW, reflectedW) > fullScaleW) return 'offScale';
  return reflectedW >= forwardW ? 'turnedRound' : undefined;
}

/** Limits of either needle in watts, wherever it stands. */
export const scaleErrorW = ({ percentOfFullScale, fullScaleW }: InLineUse): number =>
  (percentOfFullScale / 100) * fullScaleW;

/** The power in dBm with all that it may be wrong by, or why there is none. */
export type InLineFound =
  | { readonly found: true; readonly result: BandResult }
  | { readonly found: false; readonly reason: NoReading };

/** What the meter says of the power that is wanted. */
export function inLineFound(use: InLineUse): InLineFound {
  const reason = unreadable(use);
  if (reason) return { found: false, reason };
  const outcome = inLineLevel({
    forward: onScale(use, use.forwardW),
    reflected: onScale(use, use.reflectedW),
    delivery: use.wanted,
    influences: otherParts(),
  });
  if (!outcome.inRange) return { found: false, reason: outcome.reason };
  const { model } = outcome;
  if (model.kind !== 'sum')
    throw rangeError({ where: 'inLineFound', wish: 'the meter must give a sum', got: model.kind });
  return { found: true, result: bandOf(model) };
}

/** Standing-wave ratio as read and between which it lies, `upper` infinite where all may come back; or why there is none. */
export type SwrFound =
  | { readonly found: true; readonly swr: number; readonly lower: number; readonly upper: number }
  | { readonly found: false; readonly reason: NoReading };

const swrOrMore = (reflection: number): number =>
  reflection < 1 ? swrOfReflection(reflection) : Number.POSITIVE_INFINITY;

/** What the meter says of the match: worst case of both needles and of the directivity. */
export function swrFound(use: InLineUse): SwrFound {
  const reason = unreadable(use);
  if (reason) return { found: false, reason };
  const forward = onScale(use, use.forwardW);
  const reflected = onScale(use, use.reflectedW);
  const error = scaleErrorW(use);
  const swr = swrOfReflection(Math.sqrt(use.reflectedW / use.forwardW));
  if (use.reflectedW + error >= use.forwardW - error)
    return {
      found: false,
      reason: { code: 'fullScaleError', error: powerW(error), reading: reflected.power },
    };
  const outcome = inLineReflection({ forward, reflected, directivityDb: gainDb(use.directivityDb) });
  if (!outcome.inRange) return { found: false, reason: outcome.reason };
  return { found: true, swr, lower: swrOrMore(outcome.lower), upper: swrOrMore(outcome.upper) };
}

/** An error of full scale may be up to this share of the reading (common practice), rounding aside. */
const LARGEST_SHARE = 1 / 3;
const ROUNDING = 1e-9;

/** Limits of a forward reading in dB, or none where the error of the scale is more than a third of it. */
export function scaleLimitsDb(
  use: InLineUse,
  readingW: number,
): { lower: number; upper: number } | undefined {
  const share = scaleErrorW(use) / readingW;
  if (share > LARGEST_SHARE + ROUNDING) return undefined;
  return { lower: 10 * Math.log10(1 - share), upper: 10 * Math.log10(1 + share) };
}
