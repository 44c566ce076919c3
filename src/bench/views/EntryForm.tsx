import type { BenchAction, BenchState } from '../state.ts';
import { strings } from '../strings.ts';
import { LinksPart } from './LinksPart.tsx';
import { MeasuredPart } from './MeasuredPart.tsx';
import { ReadingsPart } from './ReadingsPart.tsx';
import { SpecificationPart } from './SpecificationPart.tsx';

/** Everything that can be typed. Hidden on paper and without script, where the record and the budget say it all. */
export function EntryForm({ state, send }: { state: BenchState; send: (action: BenchAction) => void }) {
  const part = { entries: state.entries, problems: state.problems, send };
  return (
    <form
      class="needs-script bench-form"
      aria-labelledby="entries"
      onSubmit={(event) => event.preventDefault()}
    >
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
    </form>
  );
}
