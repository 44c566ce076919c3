import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import { figureOf } from '../widgets/shared-cause/figure.ts';
import { sharedSpec } from '../widgets/shared-cause/spec.ts';
import { strings } from '../widgets/shared-cause/strings.ts';
import { answersOf, summarise } from '../widgets/shared-cause/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 0.1;
const { fields } = sharedSpec;

/** Two pads of one batch on the wall, what they share to be changed in one press. */
export default function StageShared() {
  const prepared = useMemo(() => defaultState(fields), []);
  const [state, send] = useStageFields(fields, prepared);
  const answers = answersOf(state.values);
  const summary = summarise(state.values);
  return (
    <div class="stage-band">
      <LineBandFigure
        place="stage"
        figure={figureOf(state)}
        words={strings.axes.pair}
        name={strings.name}
        description={strings.description(summary)}
        onGrasp={() => send({ type: 'grasp' })}
        onPull={(value) => send({ type: 'set', name: 'shared', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <StageWhatIf
        field={fields.shared}
        unit="dB"
        value={state.values.shared}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'shared', value })}
        onReset={() => send({ type: 'reset', values: prepared })}
      />
      <StageStates
        answer={answers[0].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
