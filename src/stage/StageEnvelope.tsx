import { useMemo } from 'preact/hooks';
import { EnvelopeFigure } from '../widgets/envelope/EnvelopeFigure.tsx';
import { keyedSpec } from '../widgets/envelope/spec.ts';
import { strings } from '../widgets/envelope/strings.ts';
import { answersOf, summarise } from '../widgets/envelope/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { type Start, startingAt } from '../widgets/parts/starting.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in watts. */
const PRESS_W = 0.1;

/** The keyed envelope on the wall, its peak to be changed in one press. */
export default function StageEnvelope({ start }: { readonly start?: Start | undefined }) {
  const { fields } = useMemo(() => startingAt(keyedSpec, start), [start]);
  const [state, send, reset] = useStageFields(fields);
  const answers = answersOf(state.values).slice(0, 2);
  return (
    <div class="stage-band">
      <EnvelopeFigure state={state} send={send} place="stage" />
      <StageWhatIf
        field={fields.peak}
        unit={strings.settings.units.peak}
        value={state.values.peak}
        press={PRESS_W}
        onValue={(value) => send({ type: 'set', name: 'peak', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[1]?.figure ?? ''}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
