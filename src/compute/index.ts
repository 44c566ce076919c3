/** The one door to the computation: everything public is exported here, by name. */

// Levels
export {
  amplitudeRatioToDb,
  dbToAmplitudeRatio,
  dbToNeper,
  dbToPowerRatio,
  neperToDb,
  powerRatioToDb,
  sumOfGains,
} from './decibel.ts';
// The contract: what a model, a statement and a result are
export type { Distribution, Interval, Random, Shape } from './distribution/distribution.ts';
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
export type { Correlation, FunctionModel, Input, Model, SumModel } from './model.ts';
export type { PercentQuantity } from './percent.ts';
export {
  dbToPercentOfPower,
  dbToPercentOfVolts,
  percentLimitsToDb,
  percentOfPowerToDb,
  percentOfVoltsToDb,
  smallPercentToDb,
} from './percent.ts';
export type { GainDb, LevelDbm, Ohms, PowerW, VoltsRms } from './quantity.ts';
export {
  finite,
  gainDb,
  levelDbm,
  notNegative,
  ohms,
  positive,
  powerW,
  rangeError,
  voltsRms,
} from './quantity.ts';
export type {
  BudgetRow,
  NotWhole,
  Propagation,
  Result,
  WholeDistribution,
  WorstCase,
} from './result.ts';
export type { PercentOf, Source, Statement, StatementUnit } from './statement.ts';
