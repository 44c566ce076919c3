import { useRef } from 'preact/hooks';
import { type BandFrame, isBandFrame } from '../../figures/reading-band.frame.ts';

export interface BandDragActions {
  readonly grasp: () => void;
  /** A handle was moved to this coordinate of the view box of its figure, drawn in this frame. */
  readonly pull: (id: string, x: number, frame: BandFrame) => void;
  readonly release: () => void;
  readonly cancel: () => void;
}

/**
 * Dragging of the handles in a figure (groups with `data-handle`) by pointer events on the element around it. The pointer is
 * captured; a touch that scrolls the page instead cancels, and then everything is as before. `heldIn` is the frame of the figure whose
 * handle is held: each of these actions has the figure drawn again.
 */
export function useBandDrag({ grasp, pull, release, cancel }: BandDragActions) {
  const held = useRef<
    | { readonly id: string; readonly svg: SVGSVGElement; readonly frame: BandFrame; readonly offset: number }
    | undefined
  >(undefined);
  const end = (finish: () => void) => (): void => {
    if (held.current === undefined) return;
    held.current = undefined;
    finish();
  };
  const handlers = {
    onPointerDown: (event: PointerEvent & { currentTarget: HTMLElement }): void => {
      const handle =
        event.target instanceof Element ? event.target.closest<SVGGElement>('[data-handle]') : null;
      const id = handle?.dataset.handle;
      const svg = handle?.ownerSVGElement;
      const frame = svg?.dataset.frame;
      if (!svg || id === undefined || !isBandFrame(frame) || !event.isPrimary || event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current = { id, svg, frame, offset: toFigure(svg, event) - Number(handle.dataset.end) };
      grasp();
    },
    onPointerMove: (event: PointerEvent): void => {
      if (!held.current) return;
      const { id, svg, frame, offset } = held.current;
      pull(id, toFigure(svg, event) - offset, frame);
    },
    onPointerUp: end(release),
    onPointerCancel: end(cancel),
  };
  return { handlers, heldIn: held.current?.frame };
}

/** A pointer's x in the units of the figure's view box. */
function toFigure(svg: SVGSVGElement, { clientX, clientY }: PointerEvent): number {
  const matrix = svg.getScreenCTM();
  return matrix ? new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse()).x : 0;
}
