import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { sharedSpec, shownFields, subjectOf } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface SharedCauseProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * Two values with a common cause. After using it a reader can say when a common cause widens a result, when it cancels, and what
 * becomes of a result whose parts were taken to have nothing in common; the readings of GUM H.2 are one of its states.
 */
export default function SharedCause({ instance }: SharedCauseProps) {
  const use = useFields(sharedSpec, instance);
  const { state } = use;
  const { kind } = subjectOf(state.values);
  const summary = summarise(state.values);
  return (
    <LineBandWidget
      {...use}
      spec={sharedSpec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls={kind === 'pair' ? 'shared' : 'counted'}
      axes={strings.axes[kind]}
      answers={answersOf(state.values)}
      show={shownFields(state.values)}
      words={strings}
      note={strings.note[kind]}
      summary={summary}
    />
  );
}
