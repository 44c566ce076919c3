import { figureOf } from '../widgets/dc-heat/figure.ts';
import { heatSpec } from '../widgets/dc-heat/spec.ts';
import { strings } from '../widgets/dc-heat/strings.ts';
import { answersOf, summarise } from '../widgets/dc-heat/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in minutes. */
const PRESS = 5;
const { fields } = heatSpec;

/** What waiting leaves, on the wall, the minutes with RF to be changed in one press. */
export default function StageDcHeat() {
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.waitedRf}
      pulls="waitedRf"
      unit="none"
      value={values.waitedRf}
      press={PRESS}
      onReset={reset}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
