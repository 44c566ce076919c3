import { useId, useMemo, useRef } from 'preact/hooks';
import type { Interval } from '#compute';
import { ReadingBand, type ReadingBandProps } from '../../figures/ReadingBand.tsx';
import { type BandFrame, measuresOf } from '../../figures/reading-band.frame.ts';
import { bandScale } from '../../figures/reading-band.layout.ts';
import type { BandRow } from '../../figures/reading-band.types.ts';
import { useBandDrag } from './band-drag.ts';
import { useResting } from './use-resting.ts';

export interface BandFigureProps {
  readonly rows: readonly BandRow[];
  readonly centreDbm: number;
  readonly halfSpanDb: number;
  readonly specification?: Interval;
  readonly name: string;
  readonly description: string;
  /** `page` carries the figure twice, for wide and for narrow places, and the style sheet shows the one that fits. */
  readonly place?: 'page' | 'stage';
  /** Whether this is the first state of an island, which its page was written with: then it is left as it stands there. */
  readonly asWritten?: boolean;
  readonly onGrasp: () => void;
  /** A strip's end was dragged to this distance from the middle, in dB. */
  readonly onPull: (id: string, expandedDb: number) => void;
  readonly onRelease: () => void;
  readonly onCancel: () => void;
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly BandFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The reading band with handles that can be dragged. Every handle has a labelled control elsewhere: this is the second road. */
export function BandFigure(props: BandFigureProps) {
  const { rows, centreDbm, halfSpanDb, specification, name, description, place = 'page', asWritten } = props;
  const figure = { rows, centreDbm, halfSpanDb, name, description, ...(specification && { specification }) };
  const { handlers, heldIn } = useBandDrag({
    grasp: props.onGrasp,
    release: props.onRelease,
    cancel: props.onCancel,
    pull: (id, x, frame) => props.onPull(id, bandScale(figure, measuresOf(frame)).invert(x) - centreDbm),
  });
  return (
    <div class={`band-place band-place-${place}`} {...handlers}>
      {FRAMES[place].map((frame) => (
        <Framed
          key={frame}
          frame={frame}
          figure={figure}
          waits={heldIn !== undefined && heldIn !== frame}
          asWritten={asWritten}
        />
      ))}
    </div>
  );
}

interface FramedProps {
  readonly frame: BandFrame;
  readonly figure: Omit<ReadingBandProps, 'frame'>;
  readonly waits: boolean;
  readonly asWritten: boolean | undefined;
}

/**
 * The figure in one of its frames; while a handle of another one is held, it waits, since only one of them is in sight. A figure that the page
 * was written with is drawn with the first change: waking it would hold up the page for nothing.
 */
function Framed({ frame, figure, waits, asWritten = false }: FramedProps) {
  const drawn = useResting(figure, waits);
  const written = useRef(!import.meta.env.SSR);
  written.current &&= asWritten || waits;
  const isWritten = written.current;
  return useMemo(
    () => (isWritten ? <Written /> : <ReadingBand frame={frame} {...drawn} />),
    [frame, drawn, isWritten],
  );
}

const AS_WRITTEN = { __html: '' };

/** A figure as it stands in the page: while that wakes, Preact leaves alone what stands in an element whose markup is given. */
function Written() {
  // one as the figure itself takes: those after it go on from there
  useId();
  return <svg dangerouslySetInnerHTML={AS_WRITTEN} />;
}
