import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { StatedFigure } from './StatedFigure.tsx';
import { statedSpec } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, summarise } from './words.ts';

export interface StatedLimitsProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

/**
 * A number behind a ± and what becomes of it. After using it a reader can say which standard uncertainty belongs to which statement,
 * why limits are divided by the root of three and a mismatch is not, and what taking the number for something else costs.
 */
export default function StatedLimits({ instance }: StatedLimitsProps) {
  const use = useFields(statedSpec, instance);
  const { values } = use.state;
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={statedSpec}
      instance={instance}
      figure={<StatedFigure state={use.state} send={use.send} />}
      answers={answersOf(values)}
      show={['meaning', 'halfWidth', 'slip']}
      words={strings}
      note={strings.note}
      summary={summarise(values)}
    />
  );
}
