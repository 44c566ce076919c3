import { LevelDiagram } from '../../figures/LevelDiagram.tsx';
import { isLevelFrame, type LevelFrame } from '../../figures/level-diagram.frame.ts';
import { levelDiagramLayout } from '../../figures/level-diagram.layout.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf, pulledTo } from './figure.ts';
import type { LineFields } from './spec.ts';
import { strings } from './strings.ts';
import { summarise } from './words.ts';

export interface LevelFigureProps {
  readonly state: FieldsState<LineFields>;
  readonly send: (action: FieldsAction<LineFields>) => void;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly LevelFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The staircase with a knob behind each part. The number fields beside it are the first road to the same numbers. */
export function LevelFigure({ state, send, place = 'page' }: LevelFigureProps) {
  const figure = figureOf(state);
  const drag = useFigureDrag({
    isFrame: isLevelFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (id, { x }, frame) => {
      const level = levelDiagramLayout({ ...figure, frame }).scale.invert(x);
      send({ type: 'set', ...pulledTo(state.values, id, level) });
    },
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <LevelDiagram
          key={frame}
          frame={frame}
          {...figure}
          name={strings.name}
          description={strings.description(summarise(state.values))}
        />
      ))}
    </div>
  );
}
