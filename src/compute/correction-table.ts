import { finite, notNegative, rangeError } from './quantity.ts';

/** One line of a certificate: the correction at a reading, and its expanded uncertainty, all in the unit of the readings. */
export interface TabledCorrection {
  readonly at: number;
  readonly correction: number;
  readonly expanded: number;
}

/** What a table of corrections says of one reading. */
export interface CorrectionRead {
  readonly correction: number;
  readonly expanded: number;
}

const WHERE = 'readCorrectionTable';

function checked(points: readonly TabledCorrection[]): readonly TabledCorrection[] {
  for (const { at, correction, expanded } of points) {
    finite(WHERE, 'at', at);
    finite(WHERE, 'correction', correction);
    notNegative(WHERE, 'expanded', expanded);
  }
  const sorted = points.toSorted((a, b) => a.at - b.at);
  if (points.length < 2 || new Set(points.map(({ at }) => at)).size < points.length)
    throw rangeError({
      where: WHERE,
      wish: 'points must be two or more, at different readings',
      got: points.length,
    });
  return sorted;
}

/**
 * The correction for a reading between the lines of a certificate's table: on the straight line between the two neighbours. Its
 * expanded uncertainty is the larger of theirs; what the instrument does between them is taken to be no worse. Nothing is said
 * beyond the ends of the table.
 * @throws RangeError for fewer than two points, two at one reading, numbers not finite, or a reading beyond the ends.
 * Source: common practice (interpolation between calibration points).
 */
export function readCorrectionTable({
  points,
  at,
}: {
  points: readonly TabledCorrection[];
  at: number;
}): CorrectionRead {
  const sorted = checked(points);
  const index = sorted.findIndex((point) => point.at >= finite(WHERE, 'at', at));
  const above = sorted[index];
  const below = sorted[Math.max(0, index - 1)];
  if (above === undefined || below === undefined || at < below.at)
    throw rangeError({ where: WHERE, wish: 'at must lie within the table', got: at });
  if (above.at === at) return { correction: above.correction, expanded: above.expanded };
  const share = (at - below.at) / (above.at - below.at);
  return {
    correction: below.correction + share * (above.correction - below.correction),
    expanded: Math.max(below.expanded, above.expanded),
  };
}
