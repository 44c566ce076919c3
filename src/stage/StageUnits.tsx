import { defaultState } from '../address/field-spec.ts';
import { everythingIn } from '../sheet/unit-tree.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { foldedAll, openedTo, treeSpec } from '../widgets/unit-tree/spec.ts';
import { strings } from '../widgets/unit-tree/strings.ts';
import { TreeFigure } from '../widgets/unit-tree/TreeFigure.tsx';
import { answersOf, summarise, unfoldedCount } from '../widgets/unit-tree/words.ts';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { useStageFields } from './use-stage-fields.ts';

const { fields } = treeSpec;

/** The tree of the watt on the wall, a unit more unfolded with each press; a box can be pressed as well. */
export function StageUnits() {
  const [{ values }, send, reset] = useStageFields(fields, foldedAll(defaultState(fields), 'folded'));
  const [answer] = answersOf(values);
  const { units } = everythingIn(values.root);
  const openTo = (count: number): void => {
    const next = openedTo(values, count);
    for (const unit of units) send({ type: 'set', name: unit, value: next[unit] });
  };
  return (
    <div class="stage-band">
      <TreeFigure
        state={values}
        place="stage"
        onFold={(unit, value) => send({ type: 'set', name: unit, value })}
      />
      <StageWhatIf
        field={{ ...strings.stage.unfolded, key: 'n', min: 1, max: units.length, default: 1 }}
        unit="none"
        value={unfoldedCount(values)}
        press={1}
        onValue={openTo}
        onReset={reset}
      />
      <StageStates answer={answer.figure} rows={[{ name: answer.figure, text: answer.words }]} />
      <Announcer summary={summarise(values)} />
    </div>
  );
}
