import { notNegative, positive, rangeError } from './quantity.ts';

/**
 * Bandwidth of several parts in a row (oscilloscope and probe): 1/sqrt(sum of 1/B^2), in the unit of the parts.
 * Never above the narrowest.
 * @throws RangeError if there is no part or one is not above zero.
 * Source: rise times add as squares (common practice; exact for Gaussian parts).
 */
export function combinedBandwidth(bandwidthsHz: readonly number[]): number {
  if (bandwidthsHz.length === 0)
    throw rangeError({ where: 'combinedBandwidth', wish: 'bandwidthsHz must hold at least one', got: [] });
  const sum = bandwidthsHz.reduce(
    (total, b) => total + 1 / positive('combinedBandwidth', 'bandwidthsHz', b) ** 2,
    0,
  );
  return 1 / Math.sqrt(sum);
}

/**
 * How much a single-pole front end shows too little, in dB, as a positive number: 10 lg(1 + x^2), x = f/B.
 * 0.04 dB at a tenth of the bandwidth, 0.37 at 0.3, 3.01 at the bandwidth.
 * @param ratio f/B, 0 or more. @throws RangeError if negative.
 * Source: low-pass of first order.
 */
export function singlePoleLossDb(ratio: number): number {
  const x = notNegative('singlePoleLossDb', 'ratio', ratio);
  return (10 / Math.LN10) * Math.log1p(x * x);
}

/**
 * How much a Gaussian front end shows too little, in dB, as a positive number: 10 lg(2) x^2, x = f/B.
 * 0.03 dB at a tenth of the bandwidth, 0.27 at 0.3, 3.01 at the bandwidth.
 * @param ratio f/B, 0 or more. @throws RangeError if negative.
 * Source: amplitude 2^(-x^2/2).
 */
export function gaussianLossDb(ratio: number): number {
  return 10 * Math.log10(2) * notNegative('gaussianLossDb', 'ratio', ratio) ** 2;
}

/**
 * Rise time from 10 to 90 % of a single-pole front end, in seconds: ln 9 / (2 pi B), which is 0.35/B.
 * @throws RangeError unless bandwidthHz is above zero.
 * Source: low-pass of first order.
 */
export function riseTimeS(bandwidthHz: number): number {
  return Math.log(9) / (2 * Math.PI * positive('riseTimeS', 'bandwidthHz', bandwidthHz));
}
