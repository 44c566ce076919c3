import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { pulling } from '../parts/pulling.ts';
import { RulersFigure } from '../parts/RulersFigure.tsx';
import { signalsFigure } from './rulers.ts';
import type { signalsSpec } from './spec.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

type Of = typeof signalsSpec.fields;

/** The rulers of the two signals, each signal to be pulled along them. */
export function SignalsFigure({
  state,
  send,
  place = 'page',
}: {
  state: FieldsState<Of>;
  send: (action: FieldsAction<Of>) => void;
  place?: 'page' | 'stage';
}) {
  return (
    <RulersFigure
      place={place}
      {...signalsFigure(state.values)}
      name={strings.name}
      description={strings.description(summarise(state.values))}
      {...pulling(send)}
      onPull={(name, value) => send({ type: 'set', name, value })}
    />
  );
}
