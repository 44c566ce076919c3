import { type Interval, type Propagation, validatePropagation, type WholeDistribution } from '#compute';
import { dbText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { apartDb } from '../../widgets/simulation/apart.ts';
import type { SimulatedSheet } from '../../widgets/simulation/messages.ts';
import type { NumberedPoint } from '../results/point-result.ts';
import { tryStrings as strings } from './try-strings.ts';

/** Chance moves a share of the trials by no more than this many of its standard deviations: six are never seen. */
const NOISE = 6;

/**
 * Whether the ends of a simulated interval lie where the whole distribution has them, as near as so many trials can tell: the share
 * of the distribution beyond each end against its binomial scatter.
 */
export function withinNoise({
  simulated,
  shareBelow,
  coverage,
  trials,
}: {
  simulated: Interval;
  shareBelow: (x: number) => number;
  coverage: number;
  trials: number;
}): boolean {
  const tail = (1 - coverage) / 2;
  const most = NOISE * Math.sqrt((tail * (1 - tail)) / trials);
  const beyond = [shareBelow(simulated.lower), 1 - shareBelow(simulated.upper)];
  return beyond.every((share) => Math.abs(share - tail) <= most);
}

/** What a simulation says of the whole distribution and of propagation, in sentences. */
export function simulationWords(
  style: Style,
  simulated: SimulatedSheet,
  { result }: NumberedPoint,
): readonly string[] {
  const { whole, propagation } = result.chain.result;
  if (propagation.standardUncertainty === 0) return [];
  return [
    ...('unavailable' in whole ? [] : [wholeWords(style, simulated, whole, propagation.coverageProbability)]),
    propagationWords(style, simulated, propagation),
  ];
}

const dbOf = (style: Style, db: number): string => dbText(style, { db, decimals: 3 });

function wholeWords(
  style: Style,
  { symmetric: simulated, trials }: SimulatedSheet,
  whole: WholeDistribution,
  coverage: number,
): string {
  const apart = dbOf(style, apartDb(simulated, whole.symmetric));
  const shareBelow = (x: number): number => whole.shareBelow(x);
  const say = withinNoise({ simulated, shareBelow, coverage, trials }) ? strings.alike : strings.differs;
  return say(apart);
}

function propagationWords(
  style: Style,
  { symmetric: simulated }: SimulatedSheet,
  { interval: propagated, standardUncertainty }: Propagation,
): string {
  const { tolerance, valid } = validatePropagation({ propagated, simulated, standardUncertainty, digits: 1 });
  const say = valid ? strings.validated : strings.notValidated;
  return say({ apart: dbOf(style, apartDb(simulated, propagated)), tolerance: dbOf(style, tolerance) });
}
