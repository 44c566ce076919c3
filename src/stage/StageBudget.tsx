import { ShareBar } from '../figures/ShareBar.tsx';
import { budgetSpec } from '../widgets/budget/spec.ts';
import { answersOf, rowsOf, summarise } from '../widgets/budget/words.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

/** One press, in dB. */
const PRESS = 0.2;
/** Parts that fit on a wall. */
const PARTS = 4;
const { fields } = budgetSpec;

/** The largest parts of the club's budget on the wall, the scatter of the readings to be changed in one press. */
export default function StageBudget() {
  const [{ values }, send, reset] = useStageFields(fields, { count: 2, coverage: 'p95' });
  const rows = rowsOf(values).toSorted((a, b) => b.shareOf - a.shareOf);
  const answers = answersOf(values);
  return (
    <div class="stage-band">
      <table class="parts-table">
        <tbody>
          {rows.slice(0, PARTS).map(({ id, label, shareOf, contribution }) => (
            <tr key={id}>
              <th scope="row">{label}</th>
              <td>
                <ShareBar share={shareOf} />
              </td>
              <td class="number">{contribution}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <StageWhatIf
        field={fields.scatter}
        unit="dB"
        value={values.scatter}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'scatter', value })}
        onReset={reset}
      />
      <StageStates
        answer={answers[0].figure}
        rows={answers.map(({ figure, words }) => ({ name: figure, text: words }))}
      >
        <p>{answers[2].figure}</p>
      </StageStates>
      <Announcer summary={summarise(values)} />
    </div>
  );
}
