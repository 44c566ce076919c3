import { Rulers } from '../../figures/Rulers.tsx';
import type { BandFrame } from '../../figures/reading-band.frame.ts';
import { rulersLayout } from '../../figures/rulers.layout.ts';
import type { Lane, Needle, Ruler } from '../../figures/rulers.types.ts';
import { useBandDrag } from './band-drag.ts';

export interface RulersFigureProps {
  readonly lanes: readonly Lane[];
  readonly rulers: readonly Ruler[];
  readonly needles: readonly Needle[];
  readonly name: string;
  readonly description: string;
  /** `page` carries the figure twice, for wide and for narrow places, and the style sheet shows the one that fits. */
  readonly place?: 'page' | 'stage';
  readonly onGrasp: () => void;
  /** A handle was dragged to this value: on its own ruler, or on the first one for a lane or a line across. */
  readonly onPull: (id: string, value: number) => void;
  readonly onRelease: () => void;
  readonly onCancel: () => void;
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly BandFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** Rulers with handles that can be dragged. Every handle has a labelled control elsewhere: this is the second road. */
export function RulersFigure(props: RulersFigureProps) {
  const { lanes, rulers, needles, name, description, place = 'page' } = props;
  const figure = { lanes, rulers, needles };
  const { handlers } = useBandDrag({
    grasp: props.onGrasp,
    release: props.onRelease,
    cancel: props.onCancel,
    pull: (id, x, frame) => {
      const drawn = rulersLayout({ ...figure, frame }).rulers;
      const own = drawn.find(({ ruler }) => ruler.id === id) ?? drawn[0];
      if (own) props.onPull(id, own.scale.invert(x));
    },
  });
  return (
    <div class={`band-place band-place-${place}`} {...handlers}>
      {FRAMES[place].map((frame) => (
        <Rulers key={frame} frame={frame} name={name} description={description} {...figure} />
      ))}
    </div>
  );
}
