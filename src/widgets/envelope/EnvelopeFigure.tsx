import { Envelope } from '../../figures/Envelope.tsx';
import { type EnvelopeFrame, isEnvelopeFrame } from '../../figures/envelope.frame.ts';
import { envelopeLayout } from '../../figures/envelope.layout.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf, meantMark } from './figure.ts';
import type { KeyedFields } from './spec.ts';
import { strings } from './strings.ts';
import { envelopeLabels, summarise } from './words.ts';

export interface EnvelopeFigureProps {
  readonly state: FieldsState<KeyedFields>;
  readonly send: (action: FieldsAction<KeyedFields>) => void;
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly EnvelopeFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The envelope with a knob on its peak. The number field beside it is the first road to the same number. */
export function EnvelopeFigure({ state, send, place = 'page' }: EnvelopeFigureProps) {
  const figure = figureOf(state);
  const drag = useFigureDrag({
    isFrame: isEnvelopeFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (_id, { y }, frame) => {
      const value = Math.min(figure.spanW, envelopeLayout({ ...figure, frame }).scale.invert(y));
      send({ type: 'set', name: 'peak', value });
    },
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <Envelope
          key={frame}
          frame={frame}
          {...figure}
          labels={envelopeLabels(state.values)}
          meant={meantMark(state.values)}
          axes={strings.axes}
          name={strings.name}
          description={strings.description(summarise(state.values))}
          handle
        />
      ))}
    </div>
  );
}
