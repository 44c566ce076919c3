import { useReducer } from 'preact/hooks';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { recordSentences } from './measured-words.ts';
import { summarise } from './result-words.ts';
import { demonstration, reduceBench, shownPoint } from './state.ts';
import { strings } from './strings.ts';
import { useBenchAddress } from './use-address.ts';
import { useResults } from './use-results.ts';
import { AddressPart } from './views/AddressPart.tsx';
import { AllPointsPart } from './views/AllPointsPart.tsx';
import { BenchFigure } from './views/BenchFigure.tsx';
import { ChecksCaution } from './views/ChecksCaution.tsx';
import { EntryForm } from './views/EntryForm.tsx';
import { LateParts } from './views/LateParts.tsx';
import { ProblemsPart } from './views/ProblemsPart.tsx';
import { ResultPart } from './views/ResultPart.tsx';

/**
 * The bench: a reader's own measurement from reading to verdict. After using it a reader knows what leaves the transmitter,
 * how sure that is, which link matters most, and whether the specification is kept, missed, or out of this measurement's reach.
 */
export default function Bench() {
  const [state, send] = useReducer(reduceBench, undefined, demonstration);
  const tooLong = useBenchAddress(state.entries, send);
  const { measurement, entries, problems } = state;
  const point = shownPoint(state);
  const { shown, all, settled, chainAt } = useResults(measurement, point);
  const before = chainAt(state.before, point);
  const held = chainAt(state.held?.measurement, point);
  const summary = summarise(shown);
  const stale = problems.length > 0;
  const defence = { entries, problems, send, measurement, shown };
  const { title } = shown.sheet;
  return (
    <div class="bench">
      <AddressPart problems={state.addressProblems} tooLong={tooLong} />
      <section class="bench-result" aria-labelledby="result">
        <h2 id="result">{title}</h2>
        <p class="record">{recordSentences('shown', shown).join(' ')}</p>
        <ProblemsPart state={state} shownTitle={title} send={send} />
        {shown.inRange && (
          <BenchFigure
            chain={shown.result.chain}
            before={before}
            held={held}
            state={state}
            summary={summary}
            send={send}
          />
        )}
        <ResultPart shown={shown} />
        <ChecksCaution entries={entries} measurement={measurement} shown={shown} />
        <div aria-busy={!settled}>
          <AllPointsPart points={measurement.points} all={all} />
        </div>
      </section>
      <EntryForm state={state} result={shown} send={send} />
      <LateParts {...defence} all={all} />
      <Announcer
        summary={stale ? `${strings.problems(problems.length)}. ${strings.stale(title)}` : summary}
      />
    </div>
  );
}
