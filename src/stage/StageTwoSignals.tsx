import { Announcer } from '../widgets/parts/Announcer.tsx';
import { SignalsFigure } from '../widgets/two-signals/SignalsFigure.tsx';
import { signalsSpec } from '../widgets/two-signals/spec.ts';
import { strings } from '../widgets/two-signals/strings.ts';
import { answersOf, summarise } from '../widgets/two-signals/words.ts';
import { StageAnswers } from './StageAnswers.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { strings as stageStrings } from './strings.ts';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in degrees: a sixth of the way from with to against. */
const PRESS_DEGREES = 30;
const { fields } = signalsSpec;

/** Two signals on the wall, the phase between them to be changed in one press. */
export default function StageTwoSignals() {
  const [state, send, reset] = useStageFields(fields);
  return (
    <div class="stage-band">
      <SignalsFigure state={state} send={send} place="stage" />
      <StageWhatIf
        field={fields.phase}
        legend={stageStrings.phase}
        unit={strings.settings.units.phase}
        value={state.values.phase}
        press={PRESS_DEGREES}
        onValue={(value) => send({ type: 'set', name: 'phase', value })}
        onReset={reset}
        answer={answersOf(state.values)[1]?.figure.split(',')[0]}
      />
      <StageAnswers caption={strings.name} answers={answersOf(state.values)} />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
