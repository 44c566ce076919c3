import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import { figureOf } from '../widgets/own-meter/figure.ts';
import { type MeterState, meterSpec } from '../widgets/own-meter/spec.ts';
import { strings } from '../widgets/own-meter/strings.ts';
import { answersOf, summarise } from '../widgets/own-meter/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { LineBandFigure } from '../widgets/parts/LineBandFigure.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in months. */
const PRESS = 6;
const { fields } = meterSpec;

/** The meter with its table in use on the wall, the age of the table to be changed in one press. */
export default function StageMeter() {
  const prepared = useMemo((): MeterState => ({ ...defaultState(fields), treatment: 'corrected' }), []);
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
        onPull={(value) => send({ type: 'set', name: 'reading', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <StageWhatIf
        field={fields.months}
        unit="none"
        value={state.values.months}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'months', value })}
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
