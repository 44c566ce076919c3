import { defaultState } from '../address/field-spec.ts';
import { figureOf } from '../widgets/what-comes-back/figure.ts';
import { backSpec } from '../widgets/what-comes-back/spec.ts';
import { strings } from '../widgets/what-comes-back/strings.ts';
import { answersOf, summarise } from '../widgets/what-comes-back/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 1;
const { fields } = backSpec;

/** The line on the wall, its loss to be changed in one press. */
export default function StageBack() {
  const [state, send] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      drawn={figureOf(state)}
      field={fields.loss}
      pulls="loss"
      unit={strings.settings.units.loss}
      value={values.loss}
      press={PRESS}
      onReset={() => send({ type: 'reset', values: defaultState(fields) })}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
