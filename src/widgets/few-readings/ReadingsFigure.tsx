import { Shape } from '../../figures/Shape.tsx';
import type { ShapeFrame } from '../../figures/shape.frame.ts';
import type { FoundMean } from '../../sheet/evaluated-readings.ts';
import { figureOf } from './figure.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

export interface ReadingsFigureProps {
  readonly found: FoundMean;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly ShapeFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** What the mean may be beside the bell of two standard uncertainties. */
export function ReadingsFigure({ found, place = 'page' }: ReadingsFigureProps) {
  const figure = figureOf(found);
  return (
    <div class={`plot-place plot-place-${place}`}>
      {FRAMES[place].map((frame) => (
        <Shape
          key={frame}
          frame={frame}
          {...figure}
          words={strings.axes}
          name={strings.name}
          description={strings.description(summarise(found))}
        />
      ))}
    </div>
  );
}
