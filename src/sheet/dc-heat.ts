import { type BandResult, type DcSubstitutionInfluence, dcSubstitution, rangeError } from '#compute';
import { bandOf } from './band.ts';
import { limits } from './link.ts';

/** A load in an insulated box, warmed by RF and then by direct current, and how long one waited for each. */
export interface HeatUse {
  readonly volts: number;
  readonly amperes: number;
  /** Rises of the load above the room, as read, in kelvin. */
  readonly riseRfK: number;
  readonly riseDcK: number;
  /** What either rise may be off by. */
  readonly withinK: number;
  /** Time in which 63 % of a rise is reached, and how long each run was waited for, in minutes. */
  readonly timeConstant: number;
  readonly waitedRf: number;
  readonly waitedDc: number;
  /** How much warmer the room was in the second run, unnoticed. */
  readonly roomK: number;
}

/** The club's transmitter on its insulated load. Every value is invented. */
export const clubHeat = (): HeatUse => ({
  volts: 5,
  amperes: 0.1,
  riseRfK: 9.5,
  riseDcK: 9.4,
  withinK: 0.1,
  timeConstant: 8,
  waitedRf: 45,
  waitedDc: 45,
  roomK: 0,
});

/** Part of its rise that the load has reached after a while: 1 - e^(-t/tau), the law of a body that cools to its room. */
export const reached = ({ minutes, timeConstant }: { minutes: number; timeConstant: number }): number =>
  -Math.expm1(-minutes / timeConstant);

/**
 * How far the result is off by what was not waited for and by a room that changed: 0 where both runs were waited for alike and the room
 * kept still. In dB; the rise with RF stands above the line, the one with DC below it.
 */
export function offDb({ timeConstant, waitedRf, waitedDc, roomK, riseDcK }: HeatUse): number {
  const ahead = reached({ minutes: waitedRf, timeConstant });
  const behind = reached({ minutes: waitedDc, timeConstant }) * (riseDcK / (riseDcK - roomK));
  return 10 * Math.log10(ahead / behind);
}

/** What a result may be wrong by: the club's meters, its thermometer, and heat that leaves by other ways with RF than with DC. */
export const heatParts = ({ withinK }: HeatUse): readonly DcSubstitutionInfluence[] => [
  { id: 'voltmeter', statement: limits(0.5), unit: 'percentOfDcVolts' },
  { id: 'ammeter', statement: limits(1), unit: 'percentOfDcAmperes' },
  { id: 'rf-rise', statement: limits(withinK), unit: 'kelvinRf' },
  { id: 'dc-rise', statement: limits(withinK), unit: 'kelvinDc' },
  { id: 'leak', statement: limits(1), unit: 'percentOfPower' },
];

/** What waiting and the room shift, as kelvins of the rise with RF: from what was read to what it would have become. */
export const offK = (use: HeatUse): number => use.riseRfK * Math.abs(1 - 10 ** (-offDb(use) / 10));

/** Whether everything stood still as far as the thermometer can tell. */
export const isSteady = (use: HeatUse): boolean => offK(use) <= use.withinK + STILL_K;
/** A shift on the edge of what the thermometer can tell is still; what differs by less, in kelvin, is rounding. */
const STILL_K = 1e-9;

/** The result, whatever waiting and the room did to it. @throws RangeError for a reading not above zero. */
export function heatResult(use: HeatUse): BandResult {
  const outcome = dcSubstitution({ ...use, influences: heatParts(use) });
  if (!outcome.inRange || outcome.model.kind !== 'sum')
    throw rangeError({ where: 'heatResult', wish: 'substitution must give a sum', got: outcome });
  return bandOf(outcome.model);
}
