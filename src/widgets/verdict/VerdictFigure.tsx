import { VerdictBand } from '../../figures/VerdictBand.tsx';
import { isVerdictBandFrame, type VerdictBandFrame } from '../../figures/verdict-band.frame.ts';
import { verdictBandLayout } from '../../figures/verdict-band.layout.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf } from './figure.ts';
import { formOf } from './item.ts';
import type { VerdictFields } from './spec.ts';
import { strings } from './strings.ts';

const FRAMES: Readonly<Record<'page' | 'stage', readonly VerdictBandFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

export interface VerdictFigureProps {
  readonly state: FieldsState<VerdictFields>;
  readonly send: (action: FieldsAction<VerdictFields>) => void;
  readonly summary: string;
  readonly place?: 'page' | 'stage';
}

/** The two bands, the reading's with a knob. The field beside it is the first road to the same number. */
export function VerdictFigure({ state, send, summary, place = 'page' }: VerdictFigureProps) {
  const { item } = state.values;
  const figure = figureOf(state);
  const drag = useFigureDrag({
    isFrame: isVerdictBandFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (_id, { x }, frame) => {
      const value = verdictBandLayout({ ...figure, frame }).scale.invert(x);
      send({ type: 'set', name: formOf(item).reading, value });
    },
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <VerdictBand
          key={frame}
          frame={frame}
          {...figure}
          along={strings.along[item]}
          name={strings.name}
          description={strings.description(summary)}
          handle
        />
      ))}
    </div>
  );
}
