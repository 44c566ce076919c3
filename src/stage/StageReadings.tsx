import { useMemo } from 'preact/hooks';
import type { FoundMean } from '../sheet/evaluated-readings.ts';
import { ReadingsFigure } from '../widgets/few-readings/ReadingsFigure.tsx';
import { readingsSpec, repeatedOf } from '../widgets/few-readings/spec.ts';
import { useFoundMean } from '../widgets/few-readings/use-found.ts';
import { answersOf, summarise } from '../widgets/few-readings/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

const { fields } = readingsSpec;

/** The readings on the wall, one more or less at a press. */
export default function StageReadings({ prepared: begun }: { readonly prepared: FoundMean }) {
  const [{ values }, send, reset] = useStageFields(fields);
  const found = useFoundMean(
    useMemo(() => repeatedOf(values), [values]),
    begun,
  );
  const answers = answersOf(found);
  return (
    <div class="stage-band">
      <ReadingsFigure place="stage" found={found} />
      <StageWhatIf
        field={fields.count}
        unit="none"
        value={values.count}
        press={1}
        onValue={(value) => send({ type: 'set', name: 'count', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[0]?.figure ?? ''}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(found)} />
    </div>
  );
}
