import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import { figureOf } from '../widgets/dc-heat/figure.ts';
import { type HeatState, heatSpec } from '../widgets/dc-heat/spec.ts';
import { strings } from '../widgets/dc-heat/strings.ts';
import { answersOf, summarise } from '../widgets/dc-heat/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in minutes. */
const PRESS = 5;
const { fields } = heatSpec;

/** What waiting leaves, on the wall, the minutes with RF to be changed in one press. */
export default function StageDcHeat() {
  const prepared = useMemo((): HeatState => defaultState(fields), []);
  const [state, send] = useStageFields(fields, prepared);
  const { values } = state;
  return (
    <StageLineBand
      send={send}
      drawn={figureOf(state)}
      field={fields.waitedRf}
      pulls="waitedRf"
      unit="none"
      value={values.waitedRf}
      press={PRESS}
      onReset={() => send({ type: 'reset', values: prepared })}
      answers={answersOf(values)}
      summary={summarise(values)}
      words={strings}
    />
  );
}
