import { useMemo } from 'preact/hooks';
import { LevelFigure } from '../widgets/level-diagram/LevelFigure.tsx';
import { stairsSpec } from '../widgets/level-diagram/spec.ts';
import { strings } from '../widgets/level-diagram/strings.ts';
import { answersOf, summarise } from '../widgets/level-diagram/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { type Start, startingAt } from '../widgets/parts/starting.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS_DB = 1;

/** The staircase on the wall, its first pad to be changed in one press. */
export default function StageLevels({ start }: { readonly start?: Start | undefined }) {
  const { fields } = useMemo(() => startingAt(stairsSpec, start), [start]);
  const [state, send, reset] = useStageFields(fields);
  const answers = answersOf(state.values).slice(0, 2);
  return (
    <div class="stage-band">
      <LevelFigure state={state} send={send} place="stage" />
      <StageWhatIf
        field={fields.first}
        unit={strings.settings.units.first}
        value={state.values.first}
        press={PRESS_DB}
        onValue={(value) => send({ type: 'set', name: 'first', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[0]?.figure ?? ''}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
