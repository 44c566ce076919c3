import { useMemo } from 'preact/hooks';
import type { Tried } from '../sheet/tried.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { orderOf, triesSpec } from '../widgets/tries/spec.ts';
import { TriesFigure } from '../widgets/tries/TriesFigure.tsx';
import { useTries } from '../widgets/tries/use-tries.ts';
import { answersOf, summarise, validationOf } from '../widgets/tries/words.ts';
import { UNKNOWN } from './StageAnswer.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in percent of the volts. */
const PRESS = 5;
const { fields } = triesSpec;

/** The trials on the wall, the limits of the volts to be widened in one press. */
export default function StageTries({ prepared: begun }: { readonly prepared: Tried }) {
  const [{ values }, send, reset] = useStageFields(fields);
  const { run } = useTries(
    useMemo(() => orderOf(values), [values]),
    begun,
  );
  const { interval } = values;
  const answers = answersOf(run.tried, interval);
  const answer = answers[3]?.figure ?? '';
  // what cannot be judged yet on the way is no answer to keep
  const isJudged = validationOf(run.tried, interval) !== undefined;
  return (
    <div class="stage-band">
      <TriesFigure place="stage" tried={run.tried} interval={interval} />
      <StageWhatIf
        field={fields.voltsPercent}
        unit="percent"
        value={values.voltsPercent}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'voltsPercent', value })}
        onReset={reset}
      />
      <StageStates
        answer={answer}
        ghost={isJudged ? answer : UNKNOWN}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      />
      <Announcer summary={summarise(run.tried, interval)} />
    </div>
  );
}
