import { figureOf } from '../widgets/two-rules/figure.ts';
import { rulesSpec } from '../widgets/two-rules/spec.ts';
import { strings } from '../widgets/two-rules/strings.ts';
import { answersOf, summarise } from '../widgets/two-rules/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in millimetres. */
const PRESS = 100;
const { fields } = rulesSpec;

/** The frame built with two rules on the wall, its length to be changed in one press. */
export default function StageRules() {
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.length}
      pulls="length"
      unit="mm"
      value={values.length}
      press={PRESS}
      onReset={reset}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
