/** The one door to the computation: everything public is exported here, by name, sorted by file. */

export { combinedBandwidth, gaussianLossDb, riseTimeS, singlePoleLossDb } from './bandwidth.ts';
export type { DetailedRow } from './budget.ts';
export { detailedBudget } from './budget.ts';
export type { CableLoss } from './cable.ts';
export { cableLossDb, shuntCapacitanceLossDb } from './cable.ts';
export { cautionsOf, exceeded, upperLevel } from './caution.ts';
export type {
  Caution,
  CautionInstrument,
  CautionLink,
  CautionStatus,
  InputLevel,
  InputVolts,
  PadHeat,
  PowerRating,
  UpperPowers,
} from './caution.types.ts';
export { checkModel } from './combine/check-model.ts';
export type { Coverage, CoverageWish } from './combine/coverage-factor.ts';
export { coverageOf, DEFAULT_COVERAGE_PROBABILITY } from './combine/coverage-factor.ts';
export { estimateOf } from './combine/estimate.ts';
export { propagate } from './combine/propagate.ts';
export type { ManyOutputs, Output } from './combine/propagate-many.ts';
export { propagateMany } from './combine/propagate-many.ts';
export type { SecondOrder } from './combine/second-order.ts';
export { secondOrder } from './combine/second-order.ts';
export { sensitivitiesOf } from './combine/sensitivities.ts';
export { simulate, simulateAtOnce } from './combine/simulate.ts';
export type { Simulated, SimulationProgress, SimulationRequest, StopRule } from './combine/simulation.ts';
export type { Term } from './combine/term.ts';
export type { IndependentPart } from './combine/welch-satterthwaite.ts';
export { welchSatterthwaite } from './combine/welch-satterthwaite.ts';
export { wholeDistribution } from './combine/whole-distribution.ts';
export { worstCaseOf } from './combine/worst-case.ts';
export type { Agreement, ExpandedValue, StandardValue, WeightedMean } from './compare.ts';
export { normalisedError, weightedMean } from './compare.ts';
export type { MethodsCompared } from './compare-methods.ts';
export { compareMethods } from './compare-methods.ts';
export type { ComponentUnit } from './component.ts';
export { componentOf, degreesFromReliability } from './component.ts';
export type { CorrectionLine, CorrectionPoint } from './correction-line.ts';
export { correctionLine } from './correction-line.ts';
export type { CorrectionRead, TabledCorrection } from './correction-table.ts';
export { readCorrectionTable } from './correction-table.ts';
export {
  amplitudeRatioToDb,
  dbToAmplitudeRatio,
  dbToNeper,
  dbToPowerRatio,
  neperToDb,
  powerRatioToDb,
  sumOfGains,
} from './decibel.ts';
export type { DecidingInterval } from './deciding.ts';
export { arcsine } from './distribution/arcsine.ts';
export { constant } from './distribution/constant.ts';
export { curvilinear } from './distribution/curvilinear.ts';
export type { Distribution, Interval, Random, Shape } from './distribution/distribution.ts';
export { mismatch } from './distribution/mismatch.ts';
export type { Knowledge } from './distribution/mismatch-within.ts';
export { mismatchWithin } from './distribution/mismatch-within.ts';
export { normal } from './distribution/normal.ts';
export { rayleigh } from './distribution/rayleigh.ts';
export { rectangular } from './distribution/rectangular.ts';
export { rice } from './distribution/rice.ts';
export { scaled } from './distribution/scaled.ts';
export { student } from './distribution/student.ts';
export type { Transform } from './distribution/transformed.ts';
export { transformed } from './distribution/transformed.ts';
export { trapezoidal } from './distribution/trapezoidal.ts';
export { triangular } from './distribution/triangular.ts';
export { dcPower, efficiency } from './efficiency.ts';
export type { Envelope } from './envelope.ts';
export {
  amplitudeModulated,
  meanOfPeakEnvelope,
  meanOverPeakEnvelope,
  peakEnvelopeOfMean,
} from './envelope.ts';
export { evaluate } from './evaluate.ts';
export { evaluatePrefixes } from './evaluate-prefixes.ts';
export type { FitPoint, FittedLine, Prediction } from './fit.ts';
export { fitLine, readLine } from './fit.ts';
export type { BlockStack, GaugeBlock, StatedValue } from './gauge-block.ts';
export { differenceModel, stackModel } from './gauge-block.ts';
export { heatInPad } from './heat.ts';
export type {
  CheapestChange,
  HelpQuestion,
  JudgedModel,
  LinkHelp,
  OutcomeOfChange,
  PricedQuestion,
} from './helpful.ts';
export { cheapestChange, cheapestSteps, helpSteps, whatWouldHelp } from './helpful.ts';
export type { LinkIds } from './improve.ts';
export { exchanged, improved, linksOf } from './improve.ts';
export { expansionUm, lengthAtReference, REFERENCE_CELSIUS, remainingDifferenceK } from './length.ts';
export {
  addGain,
  dbwToLevel,
  intervalInWatts,
  levelDifference,
  levelToDbw,
  levelToPower,
  powerToLevel,
} from './level.ts';
export type { Phasor } from './level-sum.ts';
export { coherentSum, meanAsPowers, meanOfDecibels, sumOfLevels } from './level-sum.ts';
export type { LevelAcross } from './level-voltage.ts';
export {
  dbmvToLevel,
  dbuvToLevel,
  dbvToLevel,
  levelToDbmv,
  levelToDbuv,
  levelToDbv,
  levelToVolts,
  voltsToLevel,
} from './level-voltage.ts';
export type { RootSumSquare } from './limits-rss.ts';
export { rootSumSquareOfLimits } from './limits-rss.ts';
export type { MeanOfMethods } from './mean-of-methods.ts';
export { meanOfMethods } from './mean-of-methods.ts';
export type {
  DcSubstitutionInfluence,
  DcSubstitutionReading,
  DcSubstitutionUnit,
} from './method/dc-substitution.ts';
export { dcSubstitution } from './method/dc-substitution.ts';
export type { InLineReading, ReflectionOutcome, ScaleReading } from './method/in-line.ts';
export { inLinePower, inLineReflection } from './method/in-line.ts';
export { inLineLevel } from './method/in-line-level.ts';
export type { Influence, MethodOutcome, MethodSpace, OutOfRange, RelativeUnit } from './method/method.ts';
export type { MethodUnit } from './method/method-unit.ts';
export type { OscilloscopeReading } from './method/oscilloscope.ts';
export { oscilloscope } from './method/oscilloscope.ts';
export type { PadsReading } from './method/pads.ts';
export { padsIntoMeter } from './method/pads.ts';
export type { PeakDetectorReading } from './method/peak-detector.ts';
export { peakDetector } from './method/peak-detector.ts';
export type { MismatchMagnitudes, TwoPort } from './mismatch-limits.ts';
export { mismatchLimits, reflectionThrough } from './mismatch-limits.ts';
export type { Correlation, FunctionModel, Input, Model, SumModel } from './model.ts';
export type { Suspect } from './outlier.ts';
export { suspectOf } from './outlier.ts';
export { padByDc, padBySwap } from './pad-calibration.ts';
export type { PercentQuantity } from './percent.ts';
export {
  dbToPercentOfPower,
  dbToPercentOfVolts,
  percentLimitsToDb,
  percentOfPowerToDb,
  percentOfVoltsToDb,
  smallPercentToDb,
} from './percent.ts';
export type { Measurand, MeasurandConditions, PowerDelivery, PowerKind } from './power-kind.ts';
export { meantPower, mismatchCorrection } from './power-kind.ts';
export type { BandResult } from './propagate-prefixes.ts';
export { propagatePrefixes } from './propagate-prefixes.ts';
export type { GainDb, LevelDbm, Ohms, PowerW, VoltsPeak, VoltsPeakToPeak, VoltsRms } from './quantity.ts';
export {
  finite,
  gainDb,
  levelDbm,
  notNegative,
  ohms,
  positive,
  powerW,
  rangeError,
  voltsPeak,
  voltsPeakToPeak,
  voltsRms,
} from './quantity.ts';
export type { AntennaGain, AntennaReference, RadiatedParts } from './radiated.ts';
export { antennaGainOver, eirp, erp, radiatedModel } from './radiated.ts';
export type { SeededRandom } from './random.ts';
export { randomFrom } from './random.ts';
export { LINE_ID, readCorrection } from './read-correction.ts';
export type { ReadingsSummary, Scatter } from './readings.ts';
export { mean, pooledScatter, standardDeviation, summariseReadings } from './readings.ts';
export { readingsThatPay } from './readings-that-pay.ts';
export type { LinePowers } from './reflection.ts';
export {
  directivityRange,
  mismatchLossDb,
  netPower,
  reflectionOfPowers,
  reflectionOfResistance,
  reflectionOfReturnLoss,
  reflectionOfSwr,
  returnLossOfReflection,
  swrOfReflection,
} from './reflection.ts';
export type {
  BudgetRow,
  NotWhole,
  Propagation,
  Result,
  WholeDistribution,
  WorstCase,
} from './result.ts';
export type { Risks } from './risk.ts';
export { risksOf } from './risk.ts';
export type { OtherShape, RobustnessRow } from './robustness.ts';
export { robustnessOf } from './robustness.ts';
export type { RoundingMode } from './rounding.ts';
export { roundToPlace, roundUncertainty } from './rounding.ts';
export { serialCorrelation } from './serial-correlation.ts';
export {
  CONVENTIONAL_1990,
  caesiumPeriods,
  changeOf2019,
  chargesPerSecond,
  josephsonConstantHzPerV,
  lightTimeS,
  thermalNoiseLevel,
  vonKlitzingOhm,
} from './si.ts';
export type { DefinitionEvent } from './si-history.ts';
export { DEFINITION_EVENTS, inchInMillimetres } from './si-history.ts';
export type { DefiningConstant, SiUnit, UnitPart } from './si-units.ts';
export { constantsOf, definingConstant, numberOfConstants, partsOf } from './si-units.ts';
export type { PowerInto } from './sine.ts';
export {
  peakOfPeakToPeak,
  peakOfPower,
  peakOfRectifiedAverage,
  peakOfRms,
  peakToPeakOfPeak,
  peakToPeakOfPower,
  powerOfPeak,
  powerOfPeakToPeak,
  powerOfVolts,
  rectifiedAverageOfPeak,
  rmsOfPeak,
  voltsOfPower,
} from './sine.ts';
export { regularisedBeta } from './special/beta.ts';
export { chiSquareQuantile, chiSquareShareAbove, chiSquareShareBelow } from './special/chi-square.ts';
export { erf, erfc } from './special/erf.ts';
export { logGamma } from './special/gamma.ts';
export { regularisedGamma } from './special/gamma-share.ts';
export { normalDensity, normalQuantile, normalShareBelow } from './special/normal.ts';
export { studentDensity, studentQuantile, studentShareBelow } from './special/student.ts';
export type { Rule, Specification } from './specification.ts';
export type { StatedResult } from './stated-result.ts';
export { statedResult } from './stated-result.ts';
export type { PercentOf, Source, Statement, StatementUnit } from './statement.ts';
export type { StepCheck } from './step-check.ts';
export { checkStep } from './step-check.ts';
export type { LimitTerm } from './sum-of-terms.ts';
export { sumOfTerms } from './sum-of-terms.ts';
export type { TargetUncertainty } from './target-uncertainty.ts';
export { targetForSpecification, targetForVerdict } from './target-uncertainty.ts';
export { correctedReading, TRANSFER_IDS, transferModel } from './transfer.ts';
export type { CorrectionFound, TransferRound } from './transfer-rounds.ts';
export { correctionOf, roundsOf } from './transfer-rounds.ts';
export type { Validation } from './validate.ts';
export { numericalTolerance, validatePropagation } from './validate.ts';
export type { DriftCheck, FloorCheck } from './validity.ts';
export { checkDrift, checkFloor, checkReconnection, harmonicsLimitsDb } from './validity.ts';
export type { Judgement, Verdict } from './verdict.ts';
export { judge } from './verdict.ts';
export type { Waveform } from './waveform.ts';
export { averageMeterRatio, crestFactor, formFactor } from './waveform.ts';
