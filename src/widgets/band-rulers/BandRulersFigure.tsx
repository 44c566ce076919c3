import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { pulling } from '../parts/pulling.ts';
import { RulersFigure } from '../parts/RulersFigure.tsx';
import { amountForUpper, fromRuler, type RulerName } from './band.ts';
import { bandFigure } from './rulers.ts';
import type { BandRulersFields } from './spec.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

interface Props {
  readonly state: FieldsState<BandRulersFields>;
  readonly send: (action: FieldsAction<BandRulersFields>) => void;
  readonly place?: 'page' | 'stage';
}

const NAMES: readonly RulerName[] = ['level', 'power', 'volts'];

/** The three rulers; the upper end of the band can be pulled on each of them. */
export function BandRulersFigure({ state, send, place = 'page' }: Props) {
  const { level, even } = state.values;
  const pull = (id: string, value: number): void => {
    const name = NAMES.find((candidate) => candidate === id);
    const dbm = name && fromRuler(name, value);
    if (dbm !== undefined) send({ type: 'set', ...amountForUpper(even, dbm - level) });
  };
  return (
    <RulersFigure
      place={place}
      lanes={[]}
      needles={[]}
      {...bandFigure(state)}
      name={strings.name}
      description={strings.description(summarise(state.values))}
      {...pulling(send)}
      onPull={pull}
    />
  );
}
