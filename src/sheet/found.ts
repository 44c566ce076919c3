import {
  type BandResult,
  type Influence,
  levelDbm,
  levelToPower,
  type MethodOutcome,
  type OutOfRange,
  type PowerW,
  type RelativeUnit,
} from '#compute';
import { bandOf } from './band.ts';

/** What a method makes of a reading: worst case and propagation in dBm, or the reason why it gives no number. */
export type Found<Reason = OutOfRange> =
  | { readonly inRange: true; readonly result: BandResult }
  | { readonly inRange: false; readonly reason: Reason };

/** The sums of a method's model. @throws RangeError for a model that is no sum of decibels. */
export function foundOf(outcome: MethodOutcome): Found {
  if (!outcome.inRange) return outcome;
  const { model } = outcome;
  if (model.kind !== 'sum') throw new RangeError(`foundOf: model must be a sum, got a ${model.kind}`);
  return { inRange: true, result: bandOf(model) };
}

/** The highest level that the specification of the club’s transmitter allows. Invented. */
export const SPECIFIED_UPPER_DBM = 28.5;

/** The power that cautions reckon with: what the specification allows at most, or the upper end of the result where that is more. */
export function upperPower(found: Found<unknown>): PowerW {
  const top = found.inRange ? found.result.propagation.interval.upper : Number.NEGATIVE_INFINITY;
  return levelToPower(levelDbm(Math.max(SPECIFIED_UPPER_DBM, top)));
}

/** What a scale may be wrong by is up to a third of the reading (common practice): beyond that there is no number. */
export const LARGEST_PERCENT = 100 / 3;

/** A part of a method that may be wrong, with what is stated about it, as its own unit has it. */
export type Part<Id extends string, Unit extends string = RelativeUnit> = Influence<Unit> & {
  readonly id: Id;
};

/** Plain limits of a part. */
export const within = <Id extends string, Unit extends string>(
  id: Id,
  halfWidth: number,
  unit: Unit,
): Part<Id, Unit> => ({ id, unit, statement: { form: 'limits', shape: 'rectangular', halfWidth } });
