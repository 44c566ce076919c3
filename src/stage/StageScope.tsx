import { useMemo } from 'preact/hooks';
import { bandwidthOf, scopeFound } from '../sheet/scope.ts';
import { numberText } from '../text/quantity-text.ts';
import { type Start, startingAt } from '../widgets/parts/starting.ts';
import { figureOf } from '../widgets/scope/figure.ts';
import { type ScopeState, scopeSpec, useOf } from '../widgets/scope/spec.ts';
import { strings } from '../widgets/scope/strings.ts';
import { answersOf, summarise } from '../widgets/scope/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { strings as stageStrings } from './strings.ts';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in MHz or in volts. */
const PRESS = { frequency: 10, peakToPeak: 1 } as const;

export interface StageScopeProps {
  readonly start?: Start | undefined;
  /** The number that a press changes; the knob of the figure pulls the frequency. */
  readonly presses?: keyof typeof PRESS | undefined;
}

/** The power and its band, or by how much the frequency is beyond what the method bears. */
function answersFor(values: ScopeState) {
  const [power, ...others] = answersOf(values);
  const use = useOf(values);
  const found = scopeFound(use);
  if (found.inRange || found.reason.code !== 'aboveBandwidth') return [power, ...others];
  const share = numberText('shown', { value: use.frequencyHz / bandwidthOf(use), decimals: 2 });
  return [{ ...power, figure: stageStrings.noNumber(share) }, ...others];
}

/** The oscilloscope on the wall, one number to be changed in one press: the frequency unless said otherwise. */
export default function StageScope({ start, presses = 'frequency' }: StageScopeProps) {
  const { fields } = useMemo(() => startingAt(scopeSpec, start), [start]);
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields[presses]}
      pulls="frequency"
      presses={presses}
      unit={strings.settings.units[presses]}
      value={values[presses]}
      press={PRESS[presses]}
      onReset={reset}
      answers={answersFor(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
