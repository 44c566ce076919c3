import { defaultState } from '../../address/field-spec.ts';
import { TREE_UNITS, type TreeUnit, wayTo } from '../../sheet/unit-tree.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { type Fold, foldedAll, treeSpec } from './spec.ts';
import { strings } from './strings.ts';
import { TreeFigure } from './TreeFigure.tsx';
import { UnitTable } from './UnitTable.tsx';
import { answersOf, summarise } from './words.ts';

export interface UnitTreeWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * The tree of a unit, unfolded node by node. After using it a reader can say what a watt, a volt, an ohm or an ampere rests on, which
 * constants cancel on the way, and why exact constants do not make a reading exact.
 */
export default function UnitTreeWidget({ instance }: UnitTreeWidgetProps) {
  const use = useFields(treeSpec, instance);
  const { state, send } = use;
  const fold = (unit: TreeUnit, value: Fold): void => send({ type: 'set', name: unit, value });
  const show = (unit: TreeUnit, value: Fold): void => {
    if (value === 'folded') fold(unit, value);
    else for (const one of wayTo(state.values.root, unit)) fold(one, value);
  };
  const all = (value: Fold): void => {
    const next = foldedAll(state.values, value);
    for (const unit of TREE_UNITS) fold(unit, next[unit]);
  };
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={treeSpec}
      instance={instance}
      figure={
        <>
          <TreeFigure state={state.values} onFold={fold} />
          <TreeFigure state={foldedAll(defaultState(treeSpec.fields), 'open')} whole />
          <p class="needs-script">
            <button type="button" onClick={() => all('open')}>
              {strings.all.open}
            </button>{' '}
            <button type="button" onClick={() => all('folded')}>
              {strings.all.folded}
            </button>
          </p>
        </>
      }
      answers={answersOf(state.values)}
      between={<UnitTable state={state.values} onFold={show} />}
      show={['root', 'level', 'half', 'load', 'counted']}
      words={strings}
      note={strings.note}
      summary={summarise(state.values)}
    />
  );
}
