import { Trace } from '../../figures/Trace.tsx';
import { isTraceFrame, type TraceFrame } from '../../figures/trace.frame.ts';
import { traceLayout } from '../../figures/trace.layout.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf } from './figure.ts';
import type { TraceFields } from './spec.ts';
import { strings } from './strings.ts';
import { summarise, traceLabels } from './words.ts';

export interface TraceFigureProps {
  readonly state: FieldsState<TraceFields>;
  readonly send: (action: FieldsAction<TraceFields>) => void;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly TraceFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The trace with a knob on its crest. The number field beside it is the first road to the same number. */
export function TraceFigure({ state, send, place = 'page' }: TraceFigureProps) {
  const figure = figureOf(state);
  const drag = useFigureDrag({
    isFrame: isTraceFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (_id, { y }, frame) => {
      const peak = Math.min(figure.spanV, traceLayout({ ...figure, frame }).scale.invert(y));
      send({ type: 'set', name: 'peakToPeak', value: 2 * peak });
    },
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <Trace
          key={frame}
          frame={frame}
          {...figure}
          labels={traceLabels(state.values)}
          axes={strings.axes}
          name={strings.name}
          description={strings.description(summarise(state.values))}
          handle
        />
      ))}
    </div>
  );
}
