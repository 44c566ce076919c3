import { useMemo } from 'preact/hooks';
import { useResting } from '../../widgets/parts/use-resting.ts';
import { blankStrings } from '../blank-strings.ts';
import { isOwn } from '../state/own.ts';
import type { BenchAction, BenchState } from '../state/state.ts';
import { shownPoint } from '../state/state.ts';
import { useLate } from '../use-late.ts';
import type { Results } from '../use-results.ts';
import { recordSentences } from '../words/measured-words.ts';
import { summarise } from '../words/result-words.ts';
import { nameOfPoint, titleOf } from '../words/shown-title.ts';
import { AllPointsPart } from './AllPointsPart.tsx';
import { BenchFigure } from './BenchFigure.tsx';
import { ChecksCaution } from './ChecksCaution.tsx';
import { ProblemsPart } from './ProblemsPart.tsx';
import { Grounds, ResultPart } from './ResultPart.tsx';

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
  const { title, points } = state.measurement;
  const now = useMemo(() => ({ state, results }), [state, shown, settled, ...all]);
  const held = state.held !== undefined;
  const late = useLate(useResting(now, held), !mayWait);
  const above = useMemo(() => <Above {...late} send={send} />, [late, send]);
  const summary = useMemo(() => summarise(late.results.shown), [late]);
  // what is pulled follows the pointer, what is typed does so after the answers
  const drawn = held ? now : late;
  const figure = useMemo(() => <Figure {...drawn} summary={summary} send={send} />, [drawn, summary, send]);
  const grounds = useMemo(() => <Grounds shown={late.results.shown} />, [late]);
  const below = useMemo(() => <Below {...late} />, [late]);
  return (
    <>
      <h2 id="result">
        <bdi>{title}</bdi>
        {points.length > 1 && `, ${nameOfPoint(shown.point)}`}
      </h2>
      {above}
      {figure}
      <ResultPart shown={shown} grounds={grounds} />
      {below}
    </>
  );
}

type PartProps = Pick<ResultSectionProps, 'state' | 'results'>;

/** What is measured, and what cannot be used. */
function Above({ state, results, send }: PartProps & Pick<ResultSectionProps, 'send'>) {
  const { shown } = results;
  const assumed = state.entries.links.filter((link) => link.assumed && !link.off).length;
  return (
    <>
      <p class="record">{recordSentences('shown', shown).join(' ')}</p>
      {assumed > 0 && <p class="measure">{blankStrings.assumed(assumed)}</p>}
      <ProblemsPart state={state} shownTitle={titleOf(state.measurement, shown.point)} send={send} />
    </>
  );
}

interface FigureProps extends PartProps, Pick<ResultSectionProps, 'send'> {
  readonly summary: string;
}

/** The figure, where there is a number to draw. */
function Figure({ state, results: { shown, chainAt }, summary, send }: FigureProps) {
  const point = shownPoint(state);
  if (!shown.inRange) return null;
  return (
    <BenchFigure
      chain={shown.result.chain}
      before={chainAt(state.before, point)}
      held={chainAt(state.held?.measurement, point)}
      state={state}
      summary={summary}
      send={send}
    />
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
