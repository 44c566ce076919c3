import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import { figureOf } from '../widgets/two-rules/figure.ts';
import { rulesSpec } from '../widgets/two-rules/spec.ts';
import { strings } from '../widgets/two-rules/strings.ts';
import { answersOf, summarise } from '../widgets/two-rules/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in millimetres. */
const PRESS = 100;
const { fields } = rulesSpec;

/** The frame built with two rules on the wall, its length to be changed in one press. */
export default function StageRules() {
  const prepared = useMemo(() => defaultState(fields), []);
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
        onPull={(value) => send({ type: 'set', name: 'length', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <StageWhatIf
        field={fields.length}
        unit="mm"
        value={state.values.length}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'length', value })}
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
