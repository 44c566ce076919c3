import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { pulling } from '../parts/pulling.ts';
import { RulersFigure } from '../parts/RulersFigure.tsx';
import { meansFigure } from './rulers.ts';
import type { meansSpec } from './spec.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

type Of = typeof meansSpec.fields;

/** The readings above their rulers, each to be pulled along them. */
export function MeansFigure({
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
      needles={[]}
      {...meansFigure(state.values)}
      name={strings.name}
      description={strings.description(summarise(state.values))}
      {...pulling(send)}
      onPull={(name, value) => send({ type: 'set', name, value })}
    />
  );
}
