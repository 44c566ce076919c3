import { useMemo } from 'preact/hooks';
import { blankStrings } from '../blank-strings.ts';
import { recordSentences } from '../measured-words.ts';
import { isOwn } from '../own.ts';
import { summarise } from '../result-words.ts';
import type { BenchAction, BenchState } from '../state.ts';
import { shownPoint } from '../state.ts';
import { useLate } from '../use-late.ts';
import type { Results } from '../use-results.ts';
import { AllPointsPart } from './AllPointsPart.tsx';
import { BenchFigure } from './BenchFigure.tsx';
import { ChecksCaution } from './ChecksCaution.tsx';
import { ProblemsPart } from './ProblemsPart.tsx';
import { ResultPart } from './ResultPart.tsx';

interface ResultSectionProps {
  readonly state: BenchState;
  readonly results: Results;
  /** Whether all but the answers themselves may be drawn a breath later. */
  readonly mayWait: boolean;
  readonly send: (action: BenchAction) => void;
}

/** The result of the shown point with its figure; of a sheet that was never usable what it still needs, and no other sheet's figure. */
export function ResultSection(props: ResultSectionProps) {
  const { state, send } = props;
  if (isOwn(state)) return <OwnResult {...props} />;
  return (
    <>
      <h2 id="result">
        <bdi>{state.entries.title.trim() || blankStrings.untitled}</bdi>
      </h2>
      <ProblemsPart state={state} shownTitle={undefined} send={send} />
    </>
  );
}

/** The result, what casts doubt on it, and the results of all points. */
function OwnResult({ state, results, mayWait, send }: ResultSectionProps) {
  const { shown, all, settled } = results;
  const now = useMemo(() => ({ state, results }), [state, shown, settled, ...all]);
  const late = useLate(now, !mayWait);
  const above = useMemo(() => <Above {...late} send={send} />, [late, send]);
  const below = useMemo(() => <Below {...late} />, [late]);
  return (
    <>
      <h2 id="result">
        <bdi>{shown.sheet.title}</bdi>
      </h2>
      {above}
      <ResultPart shown={shown} />
      {below}
    </>
  );
}

type PartProps = Pick<ResultSectionProps, 'state' | 'results'>;

/** What is measured, what cannot be used, and the figure. */
function Above({ state, results, send }: PartProps & Pick<ResultSectionProps, 'send'>) {
  const { shown, chainAt } = results;
  const point = shownPoint(state);
  const assumed = state.entries.links.filter((link) => link.assumed && !link.off).length;
  return (
    <>
      <p class="record">{recordSentences('shown', shown).join(' ')}</p>
      {assumed > 0 && <p class="measure">{blankStrings.assumed(assumed)}</p>}
      <ProblemsPart state={state} shownTitle={shown.sheet.title} send={send} />
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
    </>
  );
}

/** Checks that failed, and the results of all points. */
function Below({ state: { entries, measurement }, results: { shown, all, settled } }: PartProps) {
  return (
    <>
      <ChecksCaution entries={entries} measurement={measurement} shown={shown} />
      <div aria-busy={!settled}>
        <AllPointsPart points={measurement.points} all={all} />
      </div>
    </>
  );
}
