import { Announcer } from '../widgets/parts/Announcer.tsx';
import { traceSpec } from '../widgets/trace/spec.ts';
import { strings } from '../widgets/trace/strings.ts';
import { TraceFigure } from '../widgets/trace/TraceFigure.tsx';
import { answersOf, summarise } from '../widgets/trace/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in volts from trough to crest. */
const PRESS_V = 1;
const { fields } = traceSpec;

/** The trace on the wall, its height to be changed in one press. */
export default function StageTrace() {
  const [state, send, reset] = useStageFields(fields);
  const [measures, power] = answersOf(state.values);
  return (
    <div class="stage-band">
      <TraceFigure state={state} send={send} place="stage" />
      <StageWhatIf
        field={fields.peakToPeak}
        unit={strings.settings.units.peakToPeak}
        value={state.values.peakToPeak}
        press={PRESS_V}
        onValue={(value) => send({ type: 'set', name: 'peakToPeak', value })}
        onReset={reset}
      />
      <StageStates
        answer={power?.figure ?? ''}
        rows={[measures, power].flatMap((answer) =>
          answer ? [{ name: answer.figure, text: answer.words }] : [],
        )}
      />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
