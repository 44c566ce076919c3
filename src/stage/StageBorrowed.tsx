import { BorrowedFigure } from '../widgets/borrowed/BorrowedFigure.tsx';
import { borrowedSpec } from '../widgets/borrowed/spec.ts';
import { answersOf, summarise } from '../widgets/borrowed/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 0.1;
const { fields } = borrowedSpec;

/** The borrowed line on the wall, the lender's limits to be changed in one press. */
export default function StageBorrowed() {
  const [state, send, reset] = useStageFields(fields);
  const answers = answersOf(state.values);
  const summary = summarise(state.values);
  return (
    <div class="stage-band">
      <BorrowedFigure state={state} send={send} summary={summary} place="stage" />
      <StageWhatIf
        field={fields.lender}
        unit="dB"
        value={state.values.lender}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'lender', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[1].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
