import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { LineBandFigure } from '../parts/LineBandFigure.tsx';
import { pulling } from '../parts/pulling.ts';
import { useFields } from '../parts/use-fields.ts';
import { BudgetTable } from './BudgetTable.tsx';
import { figureOf } from './figure.ts';
import { budgetSpec, shownFields } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, formsOf, summarise } from './words.ts';

export interface BudgetWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * An uncertainty budget with its result written down. After using it a reader can say what each column is for, what few readings do
 * to the coverage factor, what rounding on the way costs, and read the same result in its usual forms; GUM H.1 is one of its states.
 */
export default function BudgetWidget({ instance }: BudgetWidgetProps) {
  const use = useFields(budgetSpec, instance);
  const { state, send } = use;
  const { values } = state;
  const summary = summarise(values);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={budgetSpec}
      instance={instance}
      figure={
        <>
          <BudgetTable state={values} />
          <LineBandFigure
            draw={() => figureOf(state)}
            words={strings.axes[values.subject]}
            name={strings.name}
            description={strings.description(summary)}
            {...pulling(send)}
            onPull={(value) => send({ type: 'set', name: 'count', value })}
          />
        </>
      }
      answers={answersOf(values)}
      between={
        <>
          <h3>{strings.forms}</h3>
          <ul>
            {formsOf(values).map((form) => (
              <li key={form}>{form}</li>
            ))}
          </ul>
        </>
      }
      show={shownFields(values)}
      words={strings}
      note={strings.note[values.subject]}
      summary={summary}
    />
  );
}
