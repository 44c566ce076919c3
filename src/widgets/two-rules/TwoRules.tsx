import { defaultState } from '../../address/field-spec.ts';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { LineBandFigure } from '../parts/LineBandFigure.tsx';
import { PlainAnswers } from '../parts/PlainAnswers.tsx';
import { Settings } from '../parts/Settings.tsx';
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
  const { state, send, problems } = useFields(rulesSpec, instance);
  const { fields } = rulesSpec;
  const summary = summarise(state.values);
  return (
    <figure class="plain-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <LineBandFigure
        figure={figureOf(state)}
        words={strings.axes}
        name={strings.name}
        description={strings.description(summary)}
        onGrasp={() => send({ type: 'grasp' })}
        onPull={(value) => send({ type: 'set', name: 'length', value })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
      />
      <PlainAnswers answers={answersOf(state.values)} />
      <Settings
        fields={fields}
        show={['length', 'first', 'second', 'step', 'known']}
        values={state.values}
        words={strings.settings}
        onValue={(name, value) => send({ type: 'set', name, value })}
      />
      <p class="small muted">{strings.note}</p>
      <p class="no-script-only">{strings.noScript}</p>
      <p class="needs-script">
        <button type="button" onClick={() => send({ type: 'reset', values: defaultState(fields) })}>
          {strings.reset}
        </button>
      </p>
      <Announcer summary={summary} />
    </figure>
  );
}
