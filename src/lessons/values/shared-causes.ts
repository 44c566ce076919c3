import {
  asIndependent,
  clubPair,
  correlationOfPair,
  type SharedPair,
  withCause,
} from '../../sheet/shared-cause.ts';
import { correlationBetween, type ImpedanceOutput, impedanceOf } from '../../sheet/simultaneous.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { numberText, quantityText } from '../../text/quantity-text.ts';

/** Numbers of the lesson on shared causes, from the club's two pads and the readings of GUM H.2. */
export function sharedValues(): Readonly<Record<string, () => string>> {
  const pair = clubPair();
  const difference = { ...pair, combined: 'difference' } as const;
  const mean = { ...pair, combined: 'mean' } as const;
  return {
    sum: () => expanded(pair),
    sumIndependent: () => independent(pair),
    sumWorst: () => worst(pair),
    r: () => number(correlationOfPair(pair)),
    difference: () => expanded(difference),
    differenceIndependent: () => independent(difference),
    differenceWorst: () => worst(difference),
    mean: () => expanded(mean),
    meanIndependent: () => independent(mean),
    readVI: () => number(correlationBetween('V', 'I')),
    readVPhi: () => number(correlationBetween('V', 'phi')),
    readIPhi: () => number(correlationBetween('I', 'phi')),
    uR: () => ohm(uOf('R', 1)),
    uRWithout: () => ohm(uOf('R', 0)),
    timesR: () => times('R'),
    uX: () => ohm(uOf('X', 1)),
    uXWithout: () => ohm(uOf('X', 0)),
    timesX: () => times('X'),
    batch: () => mistaken({ combined: 'sum', ownDb: 0.1, sharedDb: 0.5 }),
    twoReceivers: () => mistaken({ combined: 'difference', ownDb: 0.2, sharedDb: 1 }),
    averaged: () => mistaken({ combined: 'mean', ownDb: 0.1, sharedDb: 0.5 }),
  };
}

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const expanded = (pair: SharedPair): string => band(withCause(pair).propagation.expanded);
const independent = (pair: SharedPair): string => band(asIndependent(pair).propagation.expanded);
const worst = (pair: SharedPair): string => band(withCause(pair).worstCase.interval.upper);
const mistaken = (pair: SharedPair): string =>
  `${independent(pair)} is claimed where ${expanded(pair)} is right`;

const number = (value: number): string => numberText('shown', { value, decimals: 2 });
const ohm = (value: number): string => quantityText('shown', { value, decimals: 3, unit: 'ohm' });
const uOf = (output: ImpedanceOutput, counted: number): number =>
  impedanceOf({ output, counted }).standardUncertainty;
const times = (output: ImpedanceOutput): string => number(uOf(output, 0) / uOf(output, 1));
