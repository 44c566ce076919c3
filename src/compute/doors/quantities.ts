/** Quantities and their units: levels and powers, gains, voltages of a sine and of other waves, percents, and the units of the SI. */

export {
  amplitudeRatioToDb,
  dbToAmplitudeRatio,
  dbToNeper,
  dbToPowerRatio,
  neperToDb,
  powerRatioToDb,
  sumOfGains,
} from '../decibel.ts';
export type { Envelope } from '../envelope.ts';
export {
  amplitudeModulated,
  meanOfPeakEnvelope,
  meanOverPeakEnvelope,
  peakEnvelopeOfMean,
} from '../envelope.ts';
export {
  addGain,
  dbwToLevel,
  intervalInWatts,
  levelDifference,
  levelToDbw,
  levelToPower,
  powerToLevel,
} from '../level.ts';
export type { Phasor } from '../level-sum.ts';
export { coherentSum, meanAsPowers, meanOfDecibels, sumOfLevels } from '../level-sum.ts';
export type { LevelAcross } from '../level-voltage.ts';
export {
  dbmvToLevel,
  dbuvToLevel,
  dbvToLevel,
  levelToDbmv,
  levelToDbuv,
  levelToDbv,
  levelToVolts,
  voltsToLevel,
} from '../level-voltage.ts';
export type { PercentQuantity } from '../percent.ts';
export {
  dbToPercentOfPower,
  dbToPercentOfVolts,
  percentLimitsToDb,
  percentOfPowerToDb,
  percentOfVoltsToDb,
  smallPercentToDb,
} from '../percent.ts';
export type { GainDb, LevelDbm, Ohms, PowerW, VoltsPeak, VoltsPeakToPeak, VoltsRms } from '../quantity.ts';
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
} from '../quantity.ts';
export {
  CONVENTIONAL_1990,
  caesiumPeriods,
  changeOf2019,
  chargesPerSecond,
  josephsonConstantHzPerV,
  lightTimeS,
  thermalNoiseLevel,
  vonKlitzingOhm,
} from '../si.ts';
export type { DefinitionEvent } from '../si-history.ts';
export { DEFINITION_EVENTS, inchInMillimetres } from '../si-history.ts';
export type { DefiningConstant, SiUnit, UnitPart } from '../si-units.ts';
export { constantsOf, definingConstant, numberOfConstants, partsOf } from '../si-units.ts';
export type { PowerInto } from '../sine.ts';
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
} from '../sine.ts';
export type { Waveform } from '../waveform.ts';
export { averageMeterRatio, crestFactor, formFactor } from '../waveform.ts';
