import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { BoughtTable } from './BoughtTable.tsx';
import { SpendFigure } from './SpendFigure.tsx';
import { spendSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, noteOf, summarise } from './words.ts';

export interface SpendWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A chain with something to spend on it. After using it a reader can say what each link would buy, which single change earns a verdict,
 * and from when on further readings are a waste of an evening.
 */
export default function SpendWidget({ instance }: SpendWidgetProps) {
  const use = useFields(spendSpec, instance);
  const { state, send } = use;
  const summary = summarise(state.values);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={spendSpec}
      instance={instance}
      figure={<SpendFigure state={state} send={send} summary={summary} />}
      answers={answersOf(state.values)}
      show={['link', 'level', 'meter', 'mismatch', 'pad', 'coax', 'scatter', 'count']}
      below={<BoughtTable state={state.values} />}
      words={strings}
      note={noteOf(state.values)}
      summary={summary}
    />
  );
}
