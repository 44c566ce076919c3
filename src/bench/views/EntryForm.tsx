import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { DecimalChoice } from '../../widgets/parts/DecimalChoice.tsx';
import { InTurn } from '../../widgets/parts/InTurn.tsx';
import type { BenchAction } from '../state/actions.ts';
import type { BenchState } from '../state/state.types.ts';
import { strings } from '../strings.ts';
import { useLate } from '../use-late.ts';
import { HowPart } from './HowPart.tsx';
import { LinksPart } from './LinksPart.tsx';
import { MeasuredPart } from './MeasuredPart.tsx';
import { PointsPart } from './PointsPart.tsx';
import { RunningLine } from './RunningLine.tsx';
import { useFocusAfter } from './use-focus-after.ts';
import { useSameProblems, useUnchanged } from './use-unchanged.ts';
import { useUndoKeys } from './use-undo-keys.ts';

interface EntryFormProps {
  readonly state: BenchState;
  /** The result of the point which is shown, in a few words; undefined until it is there. */
  readonly running: VNode | undefined;
  /** Whether the sheet is another one than the page was written with. */
  readonly changed: boolean;
  /** Whether the fields may be drawn a breath later: they show what was typed by themselves. */
  readonly mayWait: boolean;
  /** A new number draws every field again. */
  readonly drawing: number;
  readonly send: (action: BenchAction) => void;
}

/** What is no matter of what is measured and how, and what is none of a point. */
const OF_POINTS_AND_LINKS = ['links', 'points', 'log', 'checks'] as const;
const OF_LINKS = ['links', 'checks'] as const;

/**
 * Everything that can be typed. No `<form>`: nothing is ever sent, each entry counts as it is made. Hidden on paper and without
 * script, where the record and the budget say it all. Parts that nothing has changed are not drawn again, so that a keystroke costs
 * what it changes and not what the sheet is long.
 */
export function EntryForm({ state, running, changed, mayWait, drawing, send }: EntryFormProps) {
  const drawn = useLate(state, !mayWait);
  const { entries } = drawn;
  const act = useFocusAfter({ entries, point: drawn.point, drawing }, send);
  useUndoKeys(act);
  const problems = useSameProblems(drawn.problems);
  const own = useUnchanged(entries, OF_POINTS_AND_LINKS);
  const agreed = useUnchanged(entries, OF_LINKS);
  const { links, method, date } = entries;
  const point = entries.points.find(({ id }) => id === drawn.point) ?? entries.points[0];
  const head = useMemo(
    () => (
      <>
        <InTurn>
          <MeasuredPart entries={own} problems={problems} send={act} />
        </InTurn>
        <InTurn>
          <HowPart entries={own} problems={problems} send={act} />
        </InTurn>
      </>
    ),
    [own, problems, act, drawing],
  );
  const points = useMemo(
    () =>
      point && (
        <InTurn>
          <PointsPart entries={agreed} problems={problems} send={act} point={point} />
        </InTurn>
      ),
    [agreed, problems, act, point, drawing],
  );
  const chain = useMemo(
    () => (
      <InTurn>
        <LinksPart {...{ links, method, date, problems, drawing }} send={act} />
      </InTurn>
    ),
    [links, method, date, problems, act, drawing],
  );
  return (
    <section class="needs-script bench-form" aria-labelledby="entries">
      <h2 id="entries">{strings.form}</h2>
      <p class="measure">{strings.formNote}</p>
      <DecimalChoice help={strings.decimalHelp} />
      {head}
      {points}
      {chain}
      <RunningLine state={state} words={running} changed={changed} send={act} />
    </section>
  );
}
