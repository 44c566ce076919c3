import { figureOf } from '../widgets/pads-line/figure.ts';
import { padsSpec } from '../widgets/pads-line/spec.ts';
import { strings } from '../widgets/pads-line/strings.ts';
import { answersOf, summarise } from '../widgets/pads-line/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press of the standing-wave ratio. */
const PRESS = 0.5;
/** What the room has guessed at: a bad transmitter on a fair meter through 6 dB. */
const PREPARED = { source: 2, meter: 1.25, pad: 6, reading: 10 } as const;
const { fields } = padsSpec;

/** The match through a pad on the wall, the transmitter’s standing-wave ratio to be changed in one press. */
export default function StagePads() {
  const [state, send, reset] = useStageFields(fields, PREPARED);
  const { values } = state;
  const answers = answersOf(values);
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields.source}
      pulls="pad"
      presses="source"
      unit="none"
      value={values.source}
      press={PRESS}
      onReset={reset}
      answers={answers}
      leads={2}
      says={answers[2]?.figure.split(', ')[0]}
      summary={summarise(values)}
      words={strings}
    />
  );
}
