import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { LineBandFigure } from '../parts/LineBandFigure.tsx';
import { pulling } from '../parts/pulling.ts';
import { figureOf } from './figure.ts';
import { type BorrowedFields, pulledField } from './spec.ts';
import { strings } from './strings.ts';

export interface BorrowedFigureProps {
  readonly state: FieldsState<BorrowedFields>;
  readonly send: (action: FieldsAction<BorrowedFields>) => void;
  readonly summary: string;
  readonly place?: 'page' | 'stage';
}

/** The line of corrections, with a knob for what is read later. */
export function BorrowedFigure({ state, send, summary, place = 'page' }: BorrowedFigureProps) {
  const { item } = state.values;
  return (
    <LineBandFigure
      place={place}
      draw={() => figureOf(state)}
      words={strings.axes[item]}
      name={strings.name}
      description={strings.description(summary)}
      {...pulling(send)}
      onPull={(value) => send({ type: 'set', name: pulledField(item), value })}
    />
  );
}
