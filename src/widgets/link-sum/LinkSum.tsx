import { useMemo } from 'preact/hooks';
import { defaultState } from '../../address/field-spec.ts';
import type { WholeSum } from '../../sheet/evaluated-link-sum.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { LinkSumFigure } from './LinkSumFigure.tsx';
import { LINKS, linkSumSpec, sumOf } from './spec.ts';
import { strings } from './strings.ts';
import { useWholeSum } from './use-whole.ts';
import { answersOf, summarise } from './words.ts';

export interface LinkSumProps {
  /** The whole distribution of what is prepared, so that nothing need be fetched to show it. */
  readonly prepared: WholeSum;
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

const { fields } = linkSumSpec;
const begun = sumOf(defaultState(fields));

/**
 * Links added one by one. After using it a reader can say what shape a sum has, what a bell of the same uncertainty makes of it, and
 * when the two part.
 */
export default function LinkSum({ prepared, instance }: LinkSumProps) {
  const use = useFields(linkSumSpec, instance);
  const { state, send } = use;
  const { values } = state;
  const whole = useWholeSum(
    useMemo(() => sumOf(values), [values]),
    begun,
    prepared,
  );
  const links = LINKS.slice(0, values.count);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={linkSumSpec}
      instance={instance}
      figure={<LinkSumFigure state={state} send={send} whole={whole} />}
      answers={answersOf(values, whole)}
      show={['count', ...links.map(([size]) => size)]}
      below={
        <details class="answer">
          <summary>{strings.more}</summary>
          <Settings
            fields={fields}
            show={[...links.map(([, shape]) => shape), 'coverage', 'sizes']}
            values={values}
            words={{ ...strings.settings, caption: strings.more }}
            onValue={(name, value) => send({ type: 'set', name, value })}
          />
        </details>
      }
      words={strings}
      note={strings.note}
      summary={summarise(values, whole)}
    />
  );
}
