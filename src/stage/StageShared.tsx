import { figureOf } from '../widgets/shared-cause/figure.ts';
import { sharedSpec } from '../widgets/shared-cause/spec.ts';
import { strings } from '../widgets/shared-cause/strings.ts';
import { answersOf, summarise } from '../widgets/shared-cause/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 0.1;
const { fields } = sharedSpec;

/** Two pads of one batch on the wall, what they share to be changed in one press. */
export default function StageShared() {
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.shared}
      pulls="shared"
      unit="dB"
      value={values.shared}
      press={PRESS}
      onReset={reset}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={{ ...strings, axes: strings.axes.pair }}
    />
  );
}
