import type { Point } from '../../sheet/measurement.ts';
import type { PointResult } from '../results/point-result.ts';
import { pointsStrings as strings } from '../words/points-strings.ts';
import { Fetching } from './Fetching.tsx';
import { useFetched } from './use-fetched.ts';

const loadPoints = () => import('./AllPoints.tsx');

interface AllPointsPartProps {
  readonly points: readonly Point[];
  /** One a point, undefined where it is still being worked out. */
  readonly all: readonly (PointResult | undefined)[];
}

/** The result over several points, fetched with the second of them: with one point there is nothing to compare. */
export function AllPointsPart({ points, all }: AllPointsPartProps) {
  const areSeveral = points.length > 1;
  const { module, failed, again } = useFetched(loadPoints, areSeveral);
  if (!areSeveral) return null;
  return (
    <section aria-labelledby="all-points">
      <h2 id="all-points">{strings.heading}</h2>
      {module ? <module.AllPoints points={points} all={all} /> : <Fetching failed={failed} again={again} />}
    </section>
  );
}
