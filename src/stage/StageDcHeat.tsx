import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import { figureOf } from '../widgets/dc-heat/figure.ts';
import { type HeatState, heatSpec } from '../widgets/dc-heat/spec.ts';
import { strings } from '../widgets/dc-heat/strings.ts';
import { answersOf, summarise } from '../widgets/dc-heat/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in minutes. */
const PRESS = 5;
const { fields } = heatSpec;

/** What waiting leaves, on the wall, the minutes with RF to be changed in one press. */
export default function StageDcHeat() {
  const prepared = useMemo((): HeatState => defaultState(fields), []);
  const [state, send] = useStageFields(fields, prepared);
  const answers = answersOf(state.values);
  const summary = summarise(state.values);
  return (
    <div class="stage-band">
      <LineBandFigure
        place="stage"
        figure={figureOf(state)}
        words={strings.axes}
        name={strings.name}
        description={strings.description(summary)}
        onGrasp={() => send({ type: 'grasp' })}
        onPull={(value) => send({ type: 'set', name: 'waitedRf', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <StageWhatIf
        field={fields.waitedRf}
        unit="none"
        value={state.values.waitedRf}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'waitedRf', value })}
        onReset={() => send({ type: 'reset', values: prepared })}
      />
      <StageStates
        answer={answers[0].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
