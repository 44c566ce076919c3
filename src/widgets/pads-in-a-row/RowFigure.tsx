import { LaidLengths } from '../../figures/LaidLengths.tsx';
import { isLaidFrame, type LaidFrame } from '../../figures/laid-lengths.frame.ts';
import { laidLayout } from '../../figures/laid-lengths.layout.ts';
import type { WholeRow } from '../../sheet/evaluated-pads.ts';
import type { FieldsAction, FieldsState } from '../parts/fields.ts';
import { useFigureDrag } from '../parts/figure-drag.ts';
import { figureOf, type Pulled, perStated } from './figure.ts';
import type { Lay, RowFields } from './spec.ts';
import { strings } from './strings.ts';
import { figureWords, summarise } from './words.ts';

export interface RowFigureProps {
  readonly lay: Lay;
  readonly state: FieldsState<RowFields>;
  readonly send: (action: FieldsAction<RowFields>) => void;
  /** The whole distribution of the row; nothing while it is being worked out. */
  readonly whole: WholeRow | undefined;
  readonly place?: 'page' | 'stage';
  readonly pulled?: Pulled;
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly LaidFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The row as lengths, one pad's or the meter's to be pulled by a knob. The field beside it is the first road to the same number. */
export function RowFigure({ lay, state, send, whole, place = 'page', pulled = 'pad' }: RowFigureProps) {
  const figure = figureOf(lay, state, whole, pulled);
  const drag = useFigureDrag({
    isFrame: isLaidFrame,
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (_id, { x }, frame) =>
      send({
        type: 'set',
        name: pulled,
        value: laidLayout({ ...figure, frame }).scale.invert(x) / perStated(lay, state.values, pulled),
      }),
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <LaidLengths
          key={frame}
          frame={frame}
          {...figure}
          words={figureWords(lay, state.values, whole)}
          name={strings.name[lay]}
          description={strings.description[lay](summarise(lay, state.values, whole))}
          handle
        />
      ))}
    </div>
  );
}
