import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import { figureOf } from '../widgets/pads-line/figure.ts';
import { type PadsState, padsSpec } from '../widgets/pads-line/spec.ts';
import { strings } from '../widgets/pads-line/strings.ts';
import { answersOf, summarise } from '../widgets/pads-line/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press of the standing-wave ratio. */
const PRESS = 0.5;
/** What the room has guessed at: a bad transmitter on a fair meter through 6 dB. */
const PREPARED = { source: 2, meter: 1.25, pad: 6, reading: 10 } as const;
const { fields } = padsSpec;

/** The match through a pad on the wall, the transmitter’s standing-wave ratio to be changed in one press. */
export default function StagePads() {
  const prepared = useMemo((): PadsState => ({ ...defaultState(fields), ...PREPARED }), []);
  const [state, send] = useStageFields(fields, prepared);
  const answers = answersOf(state.values);
  const summary = summarise(state.values);
  return (
    <div class="stage-band">
      <LineBandFigure
        place="stage"
        figure={figureOf(state)}
        words={strings.axes}
        name={strings.name}
        description={strings.description(summary)}
        onGrasp={() => send({ type: 'grasp' })}
        onPull={(value) => send({ type: 'set', name: 'pad', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <StageWhatIf
        field={fields.source}
        unit="none"
        value={state.values.source}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'source', value })}
        onReset={() => send({ type: 'reset', values: prepared })}
      />
      <StageStates
        answer={answers[2].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
