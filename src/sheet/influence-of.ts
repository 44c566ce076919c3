import type { Influence } from '#compute';
import type { LinkUnit } from './method.ts';
import type { Link } from './sheet.ts';

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
