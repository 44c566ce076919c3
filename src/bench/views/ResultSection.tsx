import { recordSentences } from '../measured-words.ts';
import { summarise } from '../result-words.ts';
import type { BenchAction, BenchState } from '../state.ts';
import { shownPoint } from '../state.ts';
import type { Results } from '../use-results.ts';
import { AllPointsPart } from './AllPointsPart.tsx';
import { BenchFigure } from './BenchFigure.tsx';
import { ChecksCaution } from './ChecksCaution.tsx';
import { ProblemsPart } from './ProblemsPart.tsx';
import { ResultPart } from './ResultPart.tsx';

interface ResultSectionProps {
  readonly state: BenchState;
  readonly results: Results;
  readonly send: (action: BenchAction) => void;
}

/** The result of the shown point with its figure, what casts doubt on it, and the results of all points. */
export function ResultSection({ state, results, send }: ResultSectionProps) {
  const { shown, all, settled, chainAt } = results;
  const { measurement, entries } = state;
  const point = shownPoint(state);
  const { title } = shown.sheet;
  return (
    <>
      <h2 id="result">{title}</h2>
      <p class="record">{recordSentences('shown', shown).join(' ')}</p>
      <ProblemsPart state={state} shownTitle={title} send={send} />
      {shown.inRange && (
        <BenchFigure
          chain={shown.result.chain}
          before={chainAt(state.before, point)}
          held={chainAt(state.held?.measurement, point)}
          state={state}
          summary={summarise(shown)}
          send={send}
        />
      )}
      <ResultPart shown={shown} />
      <ChecksCaution entries={entries} measurement={measurement} shown={shown} />
      <div aria-busy={!settled}>
        <AllPointsPart points={measurement.points} all={all} />
      </div>
    </>
  );
}
