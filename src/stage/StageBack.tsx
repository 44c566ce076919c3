import { useMemo } from 'preact/hooks';
import { type Start, startingAt } from '../widgets/parts/starting.ts';
import { figureOf } from '../widgets/what-comes-back/figure.ts';
import { backSpec, lineOf } from '../widgets/what-comes-back/spec.ts';
import { strings } from '../widgets/what-comes-back/strings.ts';
import { answersOf, rangeText, summarise } from '../widgets/what-comes-back/words.ts';
import { StageLineBand } from './StageLineBand.tsx';
import { strings as stageStrings } from './strings.ts';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = { loss: 1, directivity: 5 } as const;

export interface StageBackProps {
  readonly start?: Start | undefined;
  /** The number that a press changes; the knob of the figure pulls the loss. */
  readonly presses?: keyof typeof PRESS | undefined;
}

/** The line on the wall, its loss to be changed in one press, or the directivity of the meter: then what it may show is the answer. */
export default function StageBack({ start, presses = 'loss' }: StageBackProps) {
  const { fields } = useMemo(() => startingAt(backSpec, start), [start]);
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  const [swr, ...others] = answersOf(values);
  const mayShow = (style: 'shown' | 'spoken'): string =>
    stageStrings.mayShow(rangeText(style, lineOf(values)));
  const isLoss = presses === 'loss';
  const first = isLoss ? swr : { ...swr, figure: mayShow('shown') };
  return (
    <StageLineBand
      send={send}
      draw={() => figureOf(state)}
      field={fields[presses]}
      pulls="loss"
      presses={presses}
      unit={strings.settings.units[presses]}
      value={values[presses]}
      press={PRESS[presses]}
      onReset={reset}
      answers={[first, ...others]}
      summary={isLoss ? summarise(values) : `${mayShow('spoken')}. ${summarise(values)}`}
      words={strings}
    />
  );
}
