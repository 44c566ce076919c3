import type { BandFrame } from '../../figures/reading-band.frame.ts';
import { TileLine } from '../../figures/TileLine.tsx';
import { slotAt } from '../../figures/tile-line.layout.ts';
import { useBandDrag } from '../parts/band-drag.ts';
import type { LineAction, LineState } from './state.ts';
import { strings } from './strings.ts';
import { summarise, tilesOf } from './words.ts';

interface LineFigureProps {
  readonly state: LineState;
  readonly send: (action: LineAction) => void;
  /** `page` carries the figure twice, for wide and for narrow places, and the style sheet shows the one that fits. */
  readonly place?: 'page' | 'stage';
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly BandFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The line of tiles, each to be pulled to another place. Buttons in the table do the same: this is the second road. */
export function LineFigure({ state, send, place = 'page' }: LineFigureProps) {
  const { tiles } = state;
  const { handlers } = useBandDrag({
    grasp: () => send({ type: 'grasp' }),
    release: () => send({ type: 'release' }),
    cancel: () => send({ type: 'cancel' }),
    pull: (id, x, frame) => {
      if (tiles.length > 0) send({ type: 'pull', id, to: slotAt({ x, frame, count: tiles.length }) });
    },
  });
  return (
    <div class={`band-place band-place-${place}`} {...handlers}>
      {FRAMES[place].map((frame) => (
        <TileLine
          key={frame}
          frame={frame}
          tiles={tilesOf(tiles)}
          nothing={strings.nothing}
          name={strings.name}
          description={strings.description(summarise(tiles))}
        />
      ))}
    </div>
  );
}
