import { defaultState } from '../address/field-spec.ts';
import { figureOf } from '../widgets/scope/figure.ts';
import { scopeSpec } from '../widgets/scope/spec.ts';
import { strings } from '../widgets/scope/strings.ts';
import { answersOf, summarise } from '../widgets/scope/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in MHz. */
const PRESS = 10;
const { fields } = scopeSpec;

/** The oscilloscope on the wall, the frequency to be changed in one press. */
export default function StageScope() {
  const [state, send] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      drawn={figureOf(state)}
      field={fields.frequency}
      pulls="frequency"
      unit={strings.settings.units.frequency}
      value={values.frequency}
      press={PRESS}
      onReset={() => send({ type: 'reset', values: defaultState(fields) })}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
