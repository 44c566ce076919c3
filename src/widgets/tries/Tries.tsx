import { useMemo } from 'preact/hooks';
import type { Tried } from '../../sheet/tried.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { Settings } from '../parts/Settings.tsx';
import { useFields } from '../parts/use-fields.ts';
import { RunLine } from './RunLine.tsx';
import { OWN_FIELDS, orderOf, triesSpec } from './spec.ts';
import { strings } from './strings.ts';
import { TriesFigure } from './TriesFigure.tsx';
import { useTries } from './use-tries.ts';
import { answersOf, summarise } from './words.ts';

export interface TriesProps {
  /** A run that was made beforehand, so that nothing need be tried to show it. */
  readonly prepared: Tried;
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

const { fields } = triesSpec;

/**
 * A model that is no sum, tried with random numbers. After using it a reader can say what a simulation does, when it has settled, and for
 * which models propagation will not do.
 */
export default function Tries({ prepared, instance }: TriesProps) {
  const use = useFields(triesSpec, instance);
  const { values } = use.state;
  const { run, stop } = useTries(
    useMemo(() => orderOf(values), [values]),
    prepared,
  );
  const { tried } = run;
  const { interval } = values;
  const set = (name: string, value: number | string): void => use.send({ type: 'set', name, value });
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={triesSpec}
      instance={instance}
      figure={<TriesFigure tried={tried} interval={interval} />}
      answers={answersOf(tried, interval)}
      between={
        <RunLine
          run={run}
          onAgain={() => set('seed', values.seed < fields.seed.max ? values.seed + 1 : 1)}
          onStop={stop}
        />
      }
      show={['model', ...OWN_FIELDS[values.model], 'trials']}
      below={
        <details class="answer">
          <summary>{strings.more}</summary>
          <Settings
            fields={fields}
            show={['interval', 'coverage', 'order', 'seed']}
            values={values}
            words={{ ...strings.settings, caption: strings.more }}
            onValue={set}
          />
        </details>
      }
      words={strings}
      note={strings.note}
      summary={summarise(tried, interval)}
    />
  );
}
