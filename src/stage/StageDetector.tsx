import { figureOf } from '../widgets/detector/figure.ts';
import { detectorSpec } from '../widgets/detector/spec.ts';
import { strings } from '../widgets/detector/strings.ts';
import { answersOf, summarise } from '../widgets/detector/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in volts. */
const PRESS = 1;
const { fields } = detectorSpec;

/** The detector on the wall, its DC volts to be changed in one press. */
export default function StageDetector() {
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.detected}
      pulls="detected"
      unit={strings.settings.units.detected}
      value={values.detected}
      press={PRESS}
      onReset={reset}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
