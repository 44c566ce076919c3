import { Announcer } from '../widgets/parts/Announcer.tsx';
import { MeansFigure } from '../widgets/two-means/MeansFigure.tsx';
import { meansSpec } from '../widgets/two-means/spec.ts';
import { strings } from '../widgets/two-means/strings.ts';
import { answersOf, summarise } from '../widgets/two-means/words.ts';
import { StageAnswers } from './StageAnswers.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS_DB = 1;
const { fields } = meansSpec;

/** Three readings and their two means on the wall, the third to be changed in one press. */
export default function StageTwoMeans() {
  const [state, send, reset] = useStageFields(fields);
  return (
    <div class="stage-band">
      <MeansFigure state={state} send={send} place="stage" />
      <StageWhatIf
        field={fields.third}
        unit={strings.settings.units.third}
        value={state.values.third}
        press={PRESS_DB}
        onValue={(value) => send({ type: 'set', name: 'third', value })}
        onReset={reset}
        answer={answersOf(state.values)[2]?.figure}
      />
      <StageAnswers caption={strings.name} answers={answersOf(state.values)} />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
