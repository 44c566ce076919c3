import { Announcer } from '../widgets/parts/Announcer.tsx';
import { treeSpec } from '../widgets/unit-tree/spec.ts';
import { answersOf, summarise } from '../widgets/unit-tree/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 3;
const { fields } = treeSpec;

/** The charges of the direct current that heats as a level does, the level to be changed in one press. */
export function StageCharges() {
  const [{ values }, send, reset] = useStageFields(fields, { root: 'ampere' });
  const [, own, charges] = answersOf(values);
  return (
    <div class="stage-band">
      <StageWhatIf
        field={fields.level}
        unit="dBm"
        value={values.level}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'level', value })}
        onReset={reset}
      />
      <StageStates
        answer={charges.figure}
        rows={[own, charges].map(({ figure, words }) => ({ name: figure, text: words }))}
      >
        <p>{own.figure}</p>
      </StageStates>
      <Announcer summary={summarise(values)} />
    </div>
  );
}
