import { figureOf } from '../widgets/own-meter/figure.ts';
import { meterSpec } from '../widgets/own-meter/spec.ts';
import { strings } from '../widgets/own-meter/strings.ts';
import { answersOf, summarise } from '../widgets/own-meter/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in months. */
const PRESS = 6;
const { fields } = meterSpec;

/** The meter with its table in use on the wall, the age of the table to be changed in one press. */
export default function StageMeter() {
  const [state, send, reset] = useStageFields(fields, { treatment: 'corrected' });
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.months}
      pulls="reading"
      presses="months"
      unit="none"
      value={values.months}
      press={PRESS}
      onReset={reset}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
