import { Announcer } from '../widgets/parts/Announcer.tsx';
import { StatedFigure } from '../widgets/stated/StatedFigure.tsx';
import { statedSpec } from '../widgets/stated/spec.ts';
import { answersOf, summarise } from '../widgets/stated/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 0.25;
const { fields } = statedSpec;

/** Limits as a bar on the wall, to be made wider in one press. */
export default function StageStated() {
  const [state, send, reset] = useStageFields(fields);
  const answers = answersOf(state.values);
  return (
    <div class="stage-band">
      <StatedFigure place="stage" state={state} send={send} />
      <StageWhatIf
        field={fields.halfWidth}
        unit="dB"
        value={state.values.halfWidth}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'halfWidth', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[0].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
