import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import { figureOf } from '../widgets/in-line/figure.ts';
import { type InLineState, inLineSpec } from '../widgets/in-line/spec.ts';
import { strings } from '../widgets/in-line/strings.ts';
import { answersOf, summarise } from '../widgets/in-line/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in watts. */
const PRESS = 0.1;
const { fields } = inLineSpec;

/** The limits of a scale on the wall, the forward reading to be changed in one press. */
export default function StageInLine() {
  const prepared = useMemo((): InLineState => defaultState(fields), []);
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
        onPull={(value) => send({ type: 'set', name: 'forward', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <StageWhatIf
        field={fields.forward}
        unit="W"
        value={state.values.forward}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'forward', value })}
        onReset={() => send({ type: 'reset', values: prepared })}
      />
      <StageStates
        answer={answers[1].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summary} />
    </div>
  );
}
