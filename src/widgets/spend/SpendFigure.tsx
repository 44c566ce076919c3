import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { LineBandFigure } from '../parts/LineBandFigure.tsx';
import { pulling } from '../parts/pulling.ts';
import { figureOf } from './figure.ts';
import { fieldOf, type SpendFields } from './spec.ts';
import { strings } from './strings.ts';

export interface SpendFigureProps {
  readonly state: FieldsState<SpendFields>;
  readonly send: (action: FieldsAction<SpendFields>) => void;
  readonly summary: string;
  readonly place?: 'page' | 'stage';
}

/** The result's strip over how good one link is made, with a knob for that link. */
export function SpendFigure({ state, send, summary, place = 'page' }: SpendFigureProps) {
  const { link } = state.values;
  return (
    <LineBandFigure
      place={place}
      draw={() => figureOf(state)}
      words={{ up: strings.up, along: strings.along[link], limit: strings.limit }}
      name={strings.name}
      description={strings.description(summary)}
      {...pulling(send)}
      onPull={(value) => send({ type: 'set', name: fieldOf(link), value })}
    />
  );
}
