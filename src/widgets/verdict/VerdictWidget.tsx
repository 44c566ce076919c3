import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { shownFields } from './item.ts';
import { RiskTable } from './RiskTable.tsx';
import { verdictSpec } from './spec.ts';
import { strings } from './strings.ts';
import { VerdictFigure } from './VerdictFigure.tsx';
import { answersOf, summarise } from './words.ts';

export interface VerdictWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A reading's band pulled past the limits of a specification. After using it a reader can say which of three verdicts a rule gives, with
 * what probability it is right, and who bears which risk under a rule that was chosen beforehand.
 */
export default function VerdictWidget({ instance }: VerdictWidgetProps) {
  const use = useFields(verdictSpec, instance);
  const { state, send } = use;
  const summary = summarise(state.values);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={verdictSpec}
      instance={instance}
      figure={<VerdictFigure state={state} send={send} summary={summary} />}
      answers={answersOf(state.values)}
      show={shownFields(state.values)}
      below={<RiskTable state={state.values} />}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
