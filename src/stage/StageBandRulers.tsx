import { BandRulersFigure } from '../widgets/band-rulers/BandRulersFigure.tsx';
import { bandRulersSpec } from '../widgets/band-rulers/spec.ts';
import { strings } from '../widgets/band-rulers/strings.ts';
import { answersOf, summarise } from '../widgets/band-rulers/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { StageAnswers } from './StageAnswers.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS_DB = 0.5;
const { fields } = bandRulersSpec;

/** One band on three rulers on the wall, its half width to be changed in one press. */
export default function StageBandRulers() {
  const [state, send, reset] = useStageFields(fields);
  return (
    <div class="stage-band">
      <BandRulersFigure state={state} send={send} place="stage" />
      <StageWhatIf
        field={fields.halfDb}
        unit={strings.settings.units.halfDb}
        value={state.values.halfDb}
        press={PRESS_DB}
        onValue={(value) => send({ type: 'set', name: 'halfDb', value })}
        onReset={reset}
        answer={answersOf(state.values)[0]?.figure}
      />
      <StageAnswers caption={strings.name} answers={answersOf(state.values)} />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
