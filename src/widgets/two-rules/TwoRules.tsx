import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { figureOf } from './figure.ts';
import { rulesSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface TwoRulesProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * Two rules from two shops build one frame. After using it a reader can say why finer marks do not make it fit, from what length on
 * two rules part, and which of what is seen is an error, an uncertainty, or only resolution.
 */
export default function TwoRules({ instance }: TwoRulesProps) {
  const use = useFields(rulesSpec, instance);
  const { state } = use;
  const summary = summarise(state.values);
  return (
    <LineBandWidget
      {...use}
      spec={rulesSpec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls="length"
      axes={strings.axes}
      answers={answersOf(state.values)}
      show={['length', 'first', 'second', 'step', 'known']}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}
