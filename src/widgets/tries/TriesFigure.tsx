import { Shape } from '../../figures/Shape.tsx';
import type { ShapeFrame } from '../../figures/shape.frame.ts';
import type { Tried } from '../../sheet/tried.ts';
import { axesOf, figureOf } from './figure.ts';
import type { IntervalKind } from './spec.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

export interface TriesFigureProps {
  readonly tried: Tried;
  readonly interval: IntervalKind;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly ShapeFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** Trials as columns beside the bell of propagation. */
export function TriesFigure({ tried, interval, place = 'page' }: TriesFigureProps) {
  const figure = figureOf(tried, interval);
  return (
    <div class={`plot-place plot-place-${place}`}>
      {FRAMES[place].map((frame) => (
        <Shape
          key={frame}
          frame={frame}
          {...figure}
          words={axesOf(tried.order)}
          name={strings.name}
          description={strings.description(summarise(tried, interval))}
        />
      ))}
    </div>
  );
}
