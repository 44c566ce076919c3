import { useMemo, useReducer } from 'preact/hooks';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { benchChain } from './chain.ts';
import { benchResult } from './result.ts';
import { recordSentences, summarise } from './result-words.ts';
import { demonstration, reduceBench } from './state.ts';
import { strings } from './strings.ts';
import { fragmentOf, sheetAddress, useBenchAddress } from './use-address.ts';
import { AddressPart } from './views/AddressPart.tsx';
import { BehindParts } from './views/BehindParts.tsx';
import { BenchFigure } from './views/BenchFigure.tsx';
import { EntryForm } from './views/EntryForm.tsx';
import { ProblemsPart } from './views/ProblemsPart.tsx';
import { ResultPart } from './views/ResultPart.tsx';

/**
 * The bench: a reader's own measurement from reading to verdict. After using it a reader knows what leaves the transmitter,
 * how sure that is, which link matters most, and whether the specification is kept, missed, or out of this measurement's reach.
 */
export default function Bench() {
  const [state, send] = useReducer(reduceBench, undefined, demonstration);
  useBenchAddress(state.entries, send);
  const result = useMemo(() => benchResult(state.sheet), [state.sheet]);
  const before = useMemo(() => state.before && benchChain(state.before), [state.before]);
  const heldSheet = state.held?.sheet;
  const held = useMemo(() => heldSheet && benchChain(heldSheet), [heldSheet]);
  const summary = summarise(result);
  const stale = state.problems.length > 0;
  const tooLong = fragmentOf(state.entries) === undefined;
  return (
    <div class="bench">
      <AddressPart problems={state.addressProblems} tooLong={tooLong} />
      <section class="bench-result" aria-labelledby="result">
        <h2 id="result">{state.sheet.title}</h2>
        <p class="record">{recordSentences('shown', state.sheet).join(' ')}</p>
        <ProblemsPart problems={state.problems} shownTitle={state.sheet.title} />
        <BenchFigure
          chain={result.chain}
          before={before}
          held={held}
          state={state}
          summary={summary}
          send={send}
        />
        <ResultPart result={result} />
      </section>
      <EntryForm state={state} result={result} send={send} />
      <BehindParts result={result} link={() => sheetAddress(state.sheet)} />
      <Announcer
        summary={
          stale ? `${strings.problems(state.problems.length)}. ${strings.stale(state.sheet.title)}` : summary
        }
      />
    </div>
  );
}
