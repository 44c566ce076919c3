import type { Influence } from '#compute';
import type { LinkUnit } from './method.ts';
import type { Link } from './sheet.ts';

/** Units in which a link of pads and cable into a meter may be stated; the first is what a new link starts with. */
export const METER_UNITS = ['dB', 'percentOfPower', 'percentOfVolts'] as const satisfies readonly LinkUnit[];

/** What a link brings to the sums: what is stated of it, without its loss. */
export const influenceOf = ({
  id,
  statement,
  unit,
  percentOf,
  cause,
  sensitivity,
  reliability,
}: Link): Influence<LinkUnit> => ({
  id,
  statement,
  unit,
  percentOf,
  ...(cause !== undefined && { cause }),
  ...(sensitivity !== undefined && { sensitivity }),
  ...(reliability !== undefined && { reliability }),
});

/** The influences in units that a method understands. @throws RangeError for another. */
export function inUnits<Unit extends LinkUnit>(
  influences: readonly Influence<LinkUnit>[],
  units: readonly Unit[],
): Influence<Unit>[] {
  return influences.map((influence) => {
    const unit = units.find((candidate) => candidate === influence.unit);
    if (unit === undefined)
      throw new RangeError(`outcomeOf: unit must be one of ${units.join(', ')}, got "${influence.unit}"`);
    return { ...influence, unit };
  });
}
