import { useId, useMemo, useReducer } from 'preact/hooks';
import { AddressProblems } from '../parts/AddressProblems.tsx';
import { Announcer } from '../parts/Announcer.tsx';
import { pulling } from '../parts/pulling.ts';
import { RulersFigure } from '../parts/RulersFigure.tsx';
import { SelectField } from '../parts/SelectField.tsx';
import { useAddress } from '../parts/use-address.ts';
import { RatioTable } from './RatioTable.tsx';
import { ratioFigure } from './rulers.ts';
import { PREPARED_DB, ratioSpec, type Slip } from './spec.ts';
import { initialState, reduceRatio } from './state.ts';
import { strings } from './strings.ts';
import { answersOf, slipWords, summarise } from './words.ts';

export interface RatioRulerProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
}

const SLIPS: readonly Slip[] = ['none', 'tenForVolts', 'twentyForWatts'];

/**
 * One ratio on three rulers, and taken apart into steps. After using it a reader can answer: which ratio of powers, and which
 * of volts, do so many decibels stand for, how is it found without a calculator, and by how much is the head's answer off?
 */
export default function RatioRuler({ instance }: RatioRulerProps) {
  const [state, send] = useReducer(reduceRatio, PREPARED_DB, initialState);
  const spec = useMemo(ratioSpec, []);
  const carried = useMemo(
    () =>
      state.touched && state.held === undefined ? { gainDb: state.gainDb, slip: state.slip } : undefined,
    [state],
  );
  const open = (opened: { gainDb: number; slip: Slip }): void => send({ type: 'open', ...opened });
  const problems = useAddress({ spec, instance, state: carried, open });
  const summary = summarise(state);
  const slip = slipWords('shown', state);
  const id = useId();
  return (
    <figure class="ruler-widget" id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      <RulersFigure
        {...ratioFigure(state)}
        name={strings.name}
        description={strings.description(summary)}
        {...pulling(send)}
        onPull={(_, gainDb) => send({ type: 'pull', gainDb })}
      />
      {slip !== undefined && <p class="ruler-slip">{slip}</p>}
      <dl class="answers">
        {answersOf(state).map((answer) => (
          <div key={answer.id}>
            <dt>{answer.figure}</dt>
            <dd>{answer.words}</dd>
          </div>
        ))}
      </dl>
      <RatioTable state={state} send={send} />
      <div class="needs-script">
        <SelectField
          id={`${id}slip`}
          label={strings.slip}
          value={state.slip}
          options={SLIPS}
          words={strings.slips}
          onChoice={(chosen) => send({ type: 'slip', slip: chosen })}
        />
        <p>
          <button type="button" onClick={() => send({ type: 'reset', gainDb: PREPARED_DB })}>
            {strings.reset}
          </button>
        </p>
      </div>
      <p class="no-script-only">{strings.noScript}</p>
      <Announcer summary={summary} />
    </figure>
  );
}
