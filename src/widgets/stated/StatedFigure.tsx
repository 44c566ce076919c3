import { Gyration } from '../../figures/Gyration.tsx';
import { type GyrationFrame, isGyrationFrame } from '../../figures/gyration.frame.ts';
import { gyrationLayout } from '../../figures/gyration.layout.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf } from './figure.ts';
import type { StatedFields } from './spec.ts';
import { strings } from './strings.ts';
import { figureWords, summarise } from './words.ts';

export interface StatedFigureProps {
  readonly state: FieldsState<StatedFields>;
  readonly send: (action: FieldsAction<StatedFields>) => void;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly GyrationFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The bar and its lumps, the stated number to be pulled by a knob. The field beside it is the first road to the same number. */
export function StatedFigure({ state, send, place = 'page' }: StatedFigureProps) {
  const figure = figureOf(state);
  const drag = useFigureDrag({
    isFrame: isGyrationFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (_id, { x }, frame) =>
      send({
        type: 'set',
        name: 'halfWidth',
        value: gyrationLayout({ ...figure, frame }).scale.invert(x),
      }),
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <Gyration
          key={frame}
          frame={frame}
          {...figure}
          words={figureWords(state.values)}
          name={strings.name}
          description={strings.description(summarise(state.values))}
          handle
        />
      ))}
    </div>
  );
}
