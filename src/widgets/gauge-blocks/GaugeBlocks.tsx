import { useMemo } from 'preact/hooks';
import { defaultState } from '../../address/field-spec.ts';
import type { WholeClaim } from '../../sheet/evaluated-blocks.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { GaugeBlocksFigure } from './GaugeBlocksFigure.tsx';
import { blocksSpec, comparisonOf, STACK_FIELDS } from './spec.ts';
import { strings } from './strings.ts';
import { useWhole } from './use-whole.ts';
import { answersOf, summarise } from './words.ts';

export interface GaugeBlocksProps {
  /** The whole distribution of the comparison as prepared, so that nothing need be fetched to show it. */
  readonly prepared: WholeClaim;
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

const { fields } = blocksSpec;
const club = defaultState(fields);

/**
 * A stack of gauge blocks against one block. After using it a reader can say what a stack is long by, what a certificate for the
 * whole set does to the sum, and why warm hands undo all of it.
 */
export default function GaugeBlocks({ prepared, instance }: GaugeBlocksProps) {
  const use = useFields(blocksSpec, instance);
  const { state, send } = use;
  const { values } = state;
  const of = useMemo(() => comparisonOf(values), [values]);
  const isPrepared = JSON.stringify(of) === JSON.stringify(comparisonOf(club));
  const whole = useWhole(of, isPrepared, prepared);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={blocksSpec}
      instance={instance}
      figure={<GaugeBlocksFigure state={state} send={send} whole={whole} />}
      answers={answersOf(values, whole?.interval)}
      show={['stackC', 'singleC', 'counted', 'known', 'count']}
      below={
        <details class="answer">
          <summary>{strings.more}</summary>
          <Settings
            fields={fields}
            show={[...STACK_FIELDS.slice(0, values.count), 'single', 'off', 'stackPpm', 'singlePpm']}
            values={values}
            words={{ ...strings.settings, caption: strings.more }}
            onValue={(name, value) => send({ type: 'set', name, value })}
          />
        </details>
      }
      words={strings}
      note={strings.note}
      summary={summarise(values)}
    />
  );
}
