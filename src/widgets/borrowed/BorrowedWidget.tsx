import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { BorrowedFigure } from './BorrowedFigure.tsx';
import { PlacesTable } from './PlacesTable.tsx';
import { borrowedSpec, shownFields } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface BorrowedWidgetProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A line of corrections that was borrowed from a better instrument. After using it a reader can say what a later reading gains by it,
 * which part of its uncertainty no averaging shrinks, and where and for how long the line holds.
 */
export default function BorrowedWidget({ instance }: BorrowedWidgetProps) {
  const use = useFields(borrowedSpec, instance);
  const { state, send } = use;
  const { item } = state.values;
  const summary = summarise(state.values);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={borrowedSpec}
      instance={instance}
      figure={<BorrowedFigure state={state} send={send} summary={summary} />}
      answers={answersOf(state.values)}
      show={shownFields(item)}
      below={item === 'meter' ? <PlacesTable /> : undefined}
      words={strings}
      note={strings.note[item]}
      summary={summary}
    />
  );
}
