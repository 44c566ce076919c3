import { figureOf } from '../widgets/joined/figure.ts';
import { joinedSpec } from '../widgets/joined/spec.ts';
import { strings } from '../widgets/joined/strings.ts';
import { answersOf, summarise } from '../widgets/joined/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in kiloohms. */
const PRESS = 50;
const { fields } = joinedSpec;

/** The needle meter on the wall, the resistance that it is joined to changed in one press. */
export default function StageJoined() {
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.source}
      pulls="source"
      unit="kohm"
      value={values.source}
      press={PRESS}
      onReset={reset}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={{ ...strings, axes: strings.axes.source }}
    />
  );
}
