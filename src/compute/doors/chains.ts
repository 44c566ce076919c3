/** A measurement of power: its methods and what stands in its line, what is meant by power, whether it is valid and safe. */

export { combinedBandwidth, gaussianLossDb, riseTimeS, singlePoleLossDb } from '../bandwidth.ts';
export type { CableLoss } from '../cable.ts';
export { cableLossDb, shuntCapacitanceLossDb } from '../cable.ts';
export { cautionsOf, exceeded, upperLevel } from '../caution.ts';
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
} from '../caution.types.ts';
export { dcPower, efficiency } from '../efficiency.ts';
export { heatInPad } from '../heat.ts';
export type {
  DcSubstitutionInfluence,
  DcSubstitutionReading,
  DcSubstitutionUnit,
} from '../method/dc-substitution.ts';
export { dcSubstitution } from '../method/dc-substitution.ts';
export type { InLineReading, ReflectionOutcome, ScaleReading } from '../method/in-line.ts';
export { inLinePower, inLineReflection } from '../method/in-line.ts';
export { inLineLevel } from '../method/in-line-level.ts';
export type { Influence, MethodOutcome, MethodSpace, OutOfRange, RelativeUnit } from '../method/method.ts';
export type { MethodUnit } from '../method/method-unit.ts';
export type { OscilloscopeReading } from '../method/oscilloscope.ts';
export { oscilloscope } from '../method/oscilloscope.ts';
export type { PadsReading } from '../method/pads.ts';
export { padsIntoMeter } from '../method/pads.ts';
export type { PeakDetectorReading } from '../method/peak-detector.ts';
export { peakDetector } from '../method/peak-detector.ts';
export type { MismatchMagnitudes, TwoPort } from '../mismatch-limits.ts';
export { mismatchLimits, reflectionThrough } from '../mismatch-limits.ts';
export type { Measurand, MeasurandConditions, PowerDelivery, PowerKind } from '../power-kind.ts';
export { meantPower, mismatchCorrection } from '../power-kind.ts';
export type { AntennaGain, AntennaReference, RadiatedParts } from '../radiated.ts';
export { antennaGainOver, eirp, erp } from '../radiated.ts';
export type { LinePowers } from '../reflection.ts';
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
} from '../reflection.ts';
export type { DriftCheck, FloorCheck } from '../validity.ts';
export { checkDrift, checkFloor, checkReconnection, harmonicsLimitsDb } from '../validity.ts';
