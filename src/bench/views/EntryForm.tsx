import type { BenchResult } from '../result.ts';
import type { BenchAction, BenchState } from '../state.ts';
import { strings } from '../strings.ts';
import { LinksPart } from './LinksPart.tsx';
import { MeasuredPart } from './MeasuredPart.tsx';
import { ReadingsPart } from './ReadingsPart.tsx';
import { RunningLine } from './RunningLine.tsx';
import { SpecificationPart } from './SpecificationPart.tsx';

interface EntryFormProps {
  readonly state: BenchState;
  readonly result: BenchResult;
  readonly send: (action: BenchAction) => void;
}

/**
 * Everything that can be typed. No `<form>`: nothing is ever sent, each entry counts as it is made. Hidden on paper and without
 * script, where the record and the budget say it all.
 */
export function EntryForm({ state, result, send }: EntryFormProps) {
  const part = { entries: state.entries, problems: state.problems, send };
  return (
    <section class="needs-script bench-form" aria-labelledby="entries">
      <h2 id="entries">{strings.form}</h2>
      <p class="measure">{strings.formNote}</p>
      <MeasuredPart {...part} />
      <SpecificationPart {...part} />
      <ReadingsPart {...part} />
      <LinksPart {...part} taken={state.taken.at(-1)} />
      <p>
        <button type="button" onClick={() => send({ type: 'demonstration' })}>
          {strings.demonstration}
        </button>
      </p>
      <RunningLine result={result} stale={state.problems.length > 0} />
    </section>
  );
}
