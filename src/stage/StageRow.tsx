import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import type { WholeRow } from '../sheet/evaluated-pads.ts';
import { RowFigure } from '../widgets/pads-in-a-row/RowFigure.tsx';
import { type Lay, rowOf, rowSpec } from '../widgets/pads-in-a-row/spec.ts';
import { useWholeRow } from '../widgets/pads-in-a-row/use-whole-row.ts';
import { answersOf, summarise } from '../widgets/pads-in-a-row/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { type Start, startingAt } from '../widgets/parts/starting.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** What one press changes: a pad more or less where they lie end to end, else half a decibel of the meter; by an example its own. */
const PRESSED = {
  straight: { name: 'count', unit: 'none', press: 1 },
  angles: { name: 'meter', unit: 'dB', press: 0.5 },
} as const;

/** By an example, whose pads were measured: their limits. */
const PRESSED_OWN = { name: 'pad', unit: 'dB', press: 0.05 } as const;

export interface StageRowProps {
  readonly lay: Lay;
  readonly prepared: WholeRow;
  readonly start?: Start | undefined;
}

/** The row on the wall. */
export default function StageRow({ lay, prepared: whole, start }: StageRowProps) {
  const { fields } = useMemo(() => startingAt(rowSpec(lay), start), [lay, start]);
  const prepared = useMemo(() => defaultState(fields), [fields]);
  const [state, send, reset] = useStageFields(fields);
  const { values } = state;
  const of = useMemo(() => rowOf(values), [values]);
  const isPrepared = JSON.stringify(of) === JSON.stringify(rowOf(prepared));
  const now = useWholeRow(of, isPrepared, whole);
  const answers = answersOf(lay, values, now);
  const { name, unit, press } = start ? PRESSED_OWN : PRESSED[lay];
  return (
    <div class="stage-band">
      <RowFigure
        place="stage"
        lay={lay}
        state={state}
        send={send}
        whole={now}
        pulled={name === 'meter' ? name : 'pad'}
      />
      <StageWhatIf
        field={fields[name]}
        unit={unit}
        value={values[name]}
        press={press}
        onValue={(value) => send({ type: 'set', name, value })}
        onReset={reset}
      />
      <StageStates
        answer={`${answers[0].figure}; ${answers[1].figure}`}
        ghost={answers[0].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(lay, values, now)} />
    </div>
  );
}
