import { Announcer } from '../widgets/parts/Announcer.tsx';
import { SpendFigure } from '../widgets/spend/SpendFigure.tsx';
import { spendSpec } from '../widgets/spend/spec.ts';
import { answersOf, summarise } from '../widgets/spend/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 0.1;
const { fields } = spendSpec;

/** What a better pad would buy, on the wall: its limits to be changed in one press. */
export default function StageSpend() {
  const [state, send, reset] = useStageFields(fields);
  const answers = answersOf(state.values);
  const summary = summarise(state.values);
  return (
    <div class="stage-band">
      <SpendFigure state={state} send={send} summary={summary} place="stage" />
      <StageWhatIf
        field={fields.pad}
        unit="dB"
        value={state.values.pad}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'pad', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[0].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
