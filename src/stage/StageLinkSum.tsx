import { useMemo } from 'preact/hooks';
import { defaultState } from '../address/field-spec.ts';
import type { WholeSum } from '../sheet/evaluated-link-sum.ts';
import { LinkSumFigure } from '../widgets/link-sum/LinkSumFigure.tsx';
import { linkSumSpec, sumOf } from '../widgets/link-sum/spec.ts';
import { useWholeSum } from '../widgets/link-sum/use-whole.ts';
import { answersOf, summarise } from '../widgets/link-sum/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { UNKNOWN } from './StageAnswer.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

const { fields } = linkSumSpec;

/** The sum on the wall, one link more or less at a press. */
export default function StageLinkSum({ prepared: whole }: { readonly prepared: WholeSum }) {
  const [state, send, reset] = useStageFields(fields);
  const sum = useMemo(() => sumOf(state.values), [state.values]);
  const begun = useMemo(() => sumOf(defaultState(fields)), []);
  const now = useWholeSum(sum, begun, whole);
  const answers = answersOf(state.values, now);
  return (
    <div class="stage-band">
      <LinkSumFigure place="stage" state={state} send={send} whole={now} />
      <StageWhatIf
        field={fields.count}
        unit="none"
        value={state.values.count}
        press={1}
        onValue={(value) => send({ type: 'set', name: 'count', value })}
        onReset={reset}
      />
      <StageStates
        answer={now === undefined ? UNKNOWN : (answers[2]?.figure ?? '')}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(state.values, now)} />
    </div>
  );
}
