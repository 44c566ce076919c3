import { Announcer } from '../widgets/parts/Announcer.tsx';
import { verdictSpec } from '../widgets/verdict/spec.ts';
import { VerdictFigure } from '../widgets/verdict/VerdictFigure.tsx';
import { answersOf, summarise } from '../widgets/verdict/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 0.25;
const { fields } = verdictSpec;

/** A reading's band beside the limits on the wall, the reading to be changed in one press. */
export default function StageVerdict() {
  const [state, send, reset] = useStageFields(fields);
  const answers = answersOf(state.values);
  const [verdict, chance] = answers;
  const summary = summarise(state.values);
  return (
    <div class="stage-band">
      <VerdictFigure state={state} send={send} summary={summary} place="stage" />
      <StageWhatIf
        field={fields.reading}
        unit="dBm"
        value={state.values.reading}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'reading', value })}
        onReset={reset}
      />
      <StageStates
        answer={`${verdict.figure}. ${chance.figure}.`}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
