import { BlockStack } from '../../figures/BlockStack.tsx';
import { type BlockFrame, isBlockFrame } from '../../figures/block-stack.frame.ts';
import { blockStackLayout } from '../../figures/block-stack.layout.ts';
import type { WholeClaim } from '../../sheet/evaluated-blocks.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf, warmthFor } from './figure.ts';
import type { BlocksFields } from './spec.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

export interface GaugeBlocksFigureProps {
  readonly state: FieldsState<BlocksFields>;
  readonly send: (action: FieldsAction<BlocksFields>) => void;
  readonly whole: WholeClaim | undefined;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly BlockFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** Both sides and their difference; either end can be pulled, which warms or cools that side. */
export function GaugeBlocksFigure({ state, send, whole, place = 'page' }: GaugeBlocksFigureProps) {
  const figure = figureOf(state, whole);
  const drag = useFigureDrag({
    isFrame: isBlockFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (id, { x }, frame) => {
      const { scale } = blockStackLayout({ ...figure, frame });
      const warmth = warmthFor(state.values, id, scale.invert(x));
      if (warmth) send({ type: 'set', ...warmth });
    },
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <BlockStack
          key={frame}
          frame={frame}
          {...figure}
          words={strings.figure}
          name={strings.name}
          description={strings.description(summarise(state.values))}
          handle
        />
      ))}
    </div>
  );
}
