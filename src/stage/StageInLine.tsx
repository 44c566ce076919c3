import { figureOf } from '../widgets/in-line/figure.ts';
import { inLineSpec } from '../widgets/in-line/spec.ts';
import { strings } from '../widgets/in-line/strings.ts';
import { answersOf, summarise } from '../widgets/in-line/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in watts. */
const PRESS = 0.1;
const { fields } = inLineSpec;

/** The limits of a scale on the wall, the forward reading to be changed in one press. */
export default function StageInLine() {
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.forward}
      pulls="forward"
      unit="W"
      value={values.forward}
      press={PRESS}
      onReset={reset}
      answers={answersOf(values)}
      leads={1}
      summary={summarise(values)}
      words={strings}
    />
  );
}
