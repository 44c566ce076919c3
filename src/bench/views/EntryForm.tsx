import type { BenchAction } from '../actions.ts';
import { outlierWords } from '../outlier-words.ts';
import type { PointResult } from '../point-result.ts';
import type { BenchState } from '../state.types.ts';
import { strings } from '../strings.ts';
import { BeginPart } from './BeginPart.tsx';
import { HowPart } from './HowPart.tsx';
import { LinksPart } from './LinksPart.tsx';
import { MeasuredPart } from './MeasuredPart.tsx';
import { PointsPart } from './PointsPart.tsx';
import { RunningLine } from './RunningLine.tsx';
import { useFocusAfter } from './use-focus-after.ts';
import { useUndoKeys } from './use-undo-keys.ts';

interface EntryFormProps {
  readonly state: BenchState;
  /** That of the point which is shown. */
  readonly result: PointResult;
  readonly send: (action: BenchAction) => void;
}

/**
 * Everything that can be typed. No `<form>`: nothing is ever sent, each entry counts as it is made. Hidden on paper and without
 * script, where the record and the budget say it all.
 */
export function EntryForm({ state, result, send }: EntryFormProps) {
  const { entries, problems } = state;
  const act = useFocusAfter({ entries, point: state.point }, send);
  useUndoKeys(act);
  const part = { entries, problems, send: act };
  const point = entries.points.find(({ id }) => id === state.point) ?? entries.points[0];
  const settled = problems.length === 0 && result.point.id === point?.id;
  return (
    <section class="needs-script bench-form" aria-labelledby="entries">
      <h2 id="entries">{strings.form}</h2>
      <p class="measure">{strings.formNote}</p>
      <BeginPart send={act} />
      <MeasuredPart {...part} />
      <HowPart {...part} />
      {point && (
        <PointsPart {...part} point={point} outliers={settled ? outlierWords('shown', result.sheet) : []} />
      )}
      <LinksPart {...part} />
      <RunningLine state={state} result={result} send={act} />
    </section>
  );
}
