import type { Measurement } from '../../sheet/measurement.ts';
import type { PointResult } from '../results/point-result.ts';
import { pointsInOrder } from '../words/point-order.ts';
import { BudgetPart } from './BudgetPart.tsx';
import { CautionsPart } from './CautionsPart.tsx';
import { RobustnessPart } from './RobustnessPart.tsx';
import { StatedPart } from './StatedPart.tsx';
import { WaysPart } from './WaysPart.tsx';

interface BehindPartsProps {
  readonly measurement: Measurement;
  readonly shown: PointResult;
  /** One a point, undefined where it is still being worked out. */
  readonly all: readonly (PointResult | undefined)[];
}

/** What stands behind the result of the point that is shown; where there is no number, what hangs on none. */
export function BehindParts({ shown, all, measurement }: BehindPartsProps) {
  const others = pointsInOrder('shown', measurement.points, all).flatMap(({ label, result }) =>
    result === undefined || result.point.id === shown.point.id ? [] : [{ label, result }],
  );
  return (
    <>
      <CautionsPart shown={shown} others={others} />
      {shown.inRange && (
        <>
          <WaysPart result={shown.result} />
          <StatedPart result={shown.result} />
          <BudgetPart result={shown.result} links={measurement.links} />
          <RobustnessPart result={shown.result} />
        </>
      )}
    </>
  );
}
