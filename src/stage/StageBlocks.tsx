import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import type { WholeClaim } from '../sheet/evaluated-blocks.ts';
import { GaugeBlocksFigure } from '../widgets/gauge-blocks/GaugeBlocksFigure.tsx';
import { blocksSpec, comparisonOf } from '../widgets/gauge-blocks/spec.ts';
import { useWhole } from '../widgets/gauge-blocks/use-whole.ts';
import { answersOf, summarise } from '../widgets/gauge-blocks/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in kelvin. */
const PRESS = 1;
const { fields } = blocksSpec;

/** The blocks on the wall, the stack to be warmed in one press. */
export default function StageBlocks({ prepared: whole }: { readonly prepared: WholeClaim }) {
  const prepared = useMemo(() => defaultState(fields), []);
  const [state, send, reset] = useStageFields(fields);
  const of = useMemo(() => comparisonOf(state.values), [state.values]);
  const isPrepared = JSON.stringify(of) === JSON.stringify(comparisonOf(prepared));
  const now = useWhole(of, isPrepared, whole);
  const answers = answersOf(state.values, now?.interval);
  return (
    <div class="stage-band">
      <GaugeBlocksFigure place="stage" state={state} send={send} whole={now} />
      <StageWhatIf
        field={fields.stackC}
        unit="degC"
        value={state.values.stackC}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'stackC', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[1]?.figure ?? ''}
        ghost={answers[0]?.figure ?? ''}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(state.values)} />
    </div>
  );
}
