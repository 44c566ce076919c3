import { useReducer, useState } from 'preact/hooks';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { KeptLine } from './keep/KeptLine.tsx';
import { demonstration, reduceBench, shownPoint } from './state.ts';
import { strings } from './strings.ts';
import { useBenchAddress } from './use-address.ts';
import { useAnswering } from './use-answering.ts';
import { useResults } from './use-results.ts';
import { AddressPart } from './views/AddressPart.tsx';
import { AsWritten } from './views/AsWritten.tsx';
import { EntryForm } from './views/EntryForm.tsx';
import { FetchAgain } from './views/FetchAgain.tsx';
import { LateParts } from './views/LateParts.tsx';

const RESULT = { class: 'bench-result', 'aria-labelledby': 'result' } as const;

/**
 * The bench: a reader's own measurement from reading to verdict. After using it a reader knows what leaves the transmitter,
 * how sure that is, which link matters most, and whether the specification is kept, missed, or out of this measurement's reach.
 */
export default function Bench() {
  const [state, send] = useReducer(reduceBench, undefined, demonstration);
  const [written] = useState(state.entries);
  const tooLong = useBenchAddress(state.entries, send);
  const { measurement, entries, problems } = state;
  const changed = entries !== written;
  const { answering, failed, again } = useAnswering(changed);
  const results = useResults(answering, measurement, shownPoint(state));
  const stale = problems.length > 0;
  const summary = results && answering?.summarise(results.shown);
  const told =
    stale && results
      ? `${strings.problems(problems.length)}. ${strings.stale(results.shown.sheet.title)}`
      : summary;
  return (
    <div class="bench">
      <AddressPart problems={state.addressProblems} tooLong={tooLong} />
      <KeptLine state={state} begun={written} send={send} />
      {failed && <FetchAgain again={again} />}
      <AsWritten as="section" stale={changed} attributes={RESULT}>
        {answering && results && <answering.ResultSection state={state} results={results} send={send} />}
      </AsWritten>
      <EntryForm
        state={state}
        running={answering && results && <answering.RunningWords result={results.shown} stale={stale} />}
        changed={changed}
        send={send}
      />
      <LateParts
        parts={results && { entries, problems, send, measurement, shown: results.shown, all: results.all }}
        changed={changed}
      />
      <Announcer summary={told ?? ''} opening={results && answering?.summarise(results.opening)} />
    </div>
  );
}
