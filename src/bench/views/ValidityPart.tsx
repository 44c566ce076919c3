import type { Measurement } from '../../sheet/measurement.ts';
import type { PointResult } from '../results/point-result.ts';
import { validityStrings as strings } from '../validity/validity-strings.ts';
import type { PartProps } from './context.ts';
import { FetchedPart } from './FetchedPart.tsx';

/** What every part that defends a result gets: the form's own, and what is shown. */
export interface DefenceProps extends PartProps {
  readonly measurement: Measurement;
  /** Result of the point that is shown. */
  readonly shown: PointResult;
}

const load = () => import('./ValidityChecks.tsx');

/** Checks that tell whether the readings mean what they seem to; fetched when unfolded. */
export function ValidityPart(props: DefenceProps) {
  return (
    <FetchedPart id="validity" {...strings} load={load}>
      {({ ValidityChecks }) => <ValidityChecks {...props} />}
    </FetchedPart>
  );
}
