import { LineBand, type LineBandWords } from '../../figures/LineBand.tsx';
import { isLineBandFrame, type LineBandFrame } from '../../figures/line-band.frame.ts';
import { type LineBandProps, lineBandLayout } from '../../figures/line-band.layout.ts';
import { useFigureDrag } from './figure-drag.ts';

export interface LineBandFigureProps {
  /** Makes what is drawn, when it is. */
  readonly draw: () => Omit<LineBandProps, 'frame'>;
  readonly words: LineBandWords;
  readonly name: string;
  readonly description: string;
  readonly place?: 'page' | 'stage';
  readonly onGrasp: () => void;
  /** The place that is looked at was pulled to this value of the axis along. */
  readonly onPull: (x: number) => void;
  readonly onRelease: () => void;
  readonly onCancel: () => void;
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly LineBandFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** A line over a band, with a knob on the axis. The field beside it is the first road to the same number. */
export function LineBandFigure(props: LineBandFigureProps) {
  const { draw, place = 'page' } = props;
  const figure = draw();
  const drag = useFigureDrag({
    isFrame: isLineBandFrame,
    grasp: props.onGrasp,
    release: props.onRelease,
    cancel: props.onCancel,
    pull: (_id, { x }, frame) => props.onPull(lineBandLayout({ ...figure, frame }).scaleX.invert(x)),
  });
  return (
    <div class={`plot-place plot-place-${place}`} {...drag}>
      {FRAMES[place].map((frame) => (
        <LineBand
          key={frame}
          frame={frame}
          {...figure}
          words={props.words}
          name={props.name}
          description={props.description}
          handle
        />
      ))}
    </div>
  );
}
