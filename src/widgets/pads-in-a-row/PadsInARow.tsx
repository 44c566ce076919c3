import { useMemo } from 'preact/hooks';
import { defaultState } from '../../address/field-spec.ts';
import type { WholeRow } from '../../sheet/evaluated-pads.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { type Start, startingAt } from '../parts/starting.ts';
import { useFields } from '../parts/use-fields.ts';
import { RowFigure } from './RowFigure.tsx';
import { SharesTable } from './SharesTable.tsx';
import { type Lay, rowOf, rowSpec } from './spec.ts';
import { strings } from './strings.ts';
import { useWholeRow } from './use-whole-row.ts';
import { answersOf, summarise } from './words.ts';

export interface PadsInARowProps {
  /** How the parts are laid: end to end, or at right angles. */
  readonly lay: Lay;
  /** The whole distribution of the row as prepared, so that nothing need be fetched to show it. */
  readonly prepared: WholeRow;
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
  /** What it begins with where a page has numbers of its own. */
  readonly start?: Start;
}

/**
 * Two to eight pads and a meter. After using it a reader can say, laid end to end, what can be guaranteed, what that costs and when
 * nothing can; laid at right angles, how standard uncertainties combine and which part decides.
 */
export default function PadsInARow({ lay, prepared, instance, start }: PadsInARowProps) {
  const spec = useMemo(() => startingAt(rowSpec(lay), start), [lay, start]);
  const use = useFields(spec, instance);
  const { state, send } = use;
  const { values } = state;
  const of = useMemo(() => rowOf(values), [values]);
  const isPrepared = JSON.stringify(of) === JSON.stringify(rowOf(defaultState(spec.fields)));
  const whole = useWholeRow(of, isPrepared, prepared);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={spec}
      instance={instance}
      figure={<RowFigure lay={lay} state={state} send={send} whole={whole} />}
      answers={answersOf(lay, values, whole)}
      show={['count', 'pad', 'between', 'meter', 'says', 'claim']}
      below={lay === 'angles' && <SharesTable values={values} />}
      words={strings}
      note={strings.note[lay]}
      summary={summarise(lay, values, whole)}
    />
  );
}
