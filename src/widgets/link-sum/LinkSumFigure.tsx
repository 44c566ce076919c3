import { Shape } from '../../figures/Shape.tsx';
import { isShapeFrame, type ShapeFrame } from '../../figures/shape.frame.ts';
import { shapeLayout } from '../../figures/shape.layout.ts';
import type { WholeSum } from '../../sheet/evaluated-link-sum.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf, sizeFor } from './figure.ts';
import type { LinkSumFields } from './spec.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

export interface LinkSumFigureProps {
  readonly state: FieldsState<LinkSumFields>;
  readonly send: (action: FieldsAction<LinkSumFields>) => void;
  readonly whole: WholeSum | undefined;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly ShapeFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The sum of the links beside its bell; the limit of the first link can be pulled. */
export function LinkSumFigure({ state, send, whole, place = 'page' }: LinkSumFigureProps) {
  const figure = figureOf(state, whole);
  const drag = useFigureDrag({
    isFrame: isShapeFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (_id, { x }, frame) => {
      const place = shapeLayout({ ...figure, frame }).scale.invert(x);
      send({ type: 'set', name: 'first', value: sizeFor(state.values, place) });
    },
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <Shape
          key={frame}
          frame={frame}
          {...figure}
          words={strings.axes}
          name={strings.name}
          description={strings.description(summarise(state.values, whole))}
        />
      ))}
    </div>
  );
}
