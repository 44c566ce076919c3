/** Readings and comparisons: scatter, lines of corrections, calibrations borrowed and lent, results held against each other. */

export type { Agreement, ExpandedValue, StandardValue, WeightedMean } from '../compare.ts';
export { normalisedError, weightedMean } from '../compare.ts';
export type { MethodsCompared } from '../compare-methods.ts';
export { compareMethods } from '../compare-methods.ts';
export type { CorrectionLine, CorrectionPoint } from '../correction-line.ts';
export { correctionLine } from '../correction-line.ts';
export type { CorrectionRead, TabledCorrection } from '../correction-table.ts';
export { readCorrectionTable } from '../correction-table.ts';
export type { FitPoint, FittedLine, Prediction } from '../fit.ts';
export { fitLine, readLine } from '../fit.ts';
export type { BlockStack, GaugeBlock, StatedValue } from '../gauge-block.ts';
export { differenceModel, stackModel } from '../gauge-block.ts';
export { expansionUm, lengthAtReference, REFERENCE_CELSIUS, remainingDifferenceK } from '../length.ts';
export type { MeanOfMethods } from '../mean-of-methods.ts';
export { meanOfMethods } from '../mean-of-methods.ts';
export type { Suspect } from '../outlier.ts';
export { suspectOf } from '../outlier.ts';
export { padByDc, padBySwap } from '../pad-calibration.ts';
export { readCorrection } from '../read-correction.ts';
export type { ReadingsSummary, Scatter } from '../readings.ts';
export { mean, pooledScatter, standardDeviation, summariseReadings } from '../readings.ts';
export { readingsThatPay } from '../readings-that-pay.ts';
export { serialCorrelation } from '../serial-correlation.ts';
export { correctedReading, TRANSFER_IDS, transferModel } from '../transfer.ts';
export type { CorrectionFound, TransferRound } from '../transfer-rounds.ts';
export { correctionOf, roundsOf } from '../transfer-rounds.ts';
