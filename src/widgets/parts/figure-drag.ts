import { useRef } from 'preact/hooks';

/** A place in the units of a figure's view box. */
export interface FigurePoint {
  readonly x: number;
  readonly y: number;
}

export interface FigureDragActions<Frame extends string> {
  readonly isFrame: (name: string | undefined) => name is Frame;
  readonly grasp: () => void;
  /** A handle was moved to this place in its figure, drawn in this frame. */
  readonly pull: (id: string, at: FigurePoint, frame: Frame) => void;
  readonly release: () => void;
  readonly cancel: () => void;
}

interface Held<Frame> {
  readonly id: string;
  /** Only this one counts: another finger may come down on the figure meanwhile. */
  readonly pointerId: number;
  readonly svg: SVGSVGElement;
  readonly frame: Frame;
  /** From the handle's place to where the pointer took hold of it. */
  readonly offset: FigurePoint;
}

/**
 * Dragging of the handles in a figure by pointer events on the element around it. A handle is a group with `data-handle` (its id),
 * `data-x` and `data-y` (its place). The pointer is captured; one that the browser takes away puts everything back.
 */
export function useFigureDrag<Frame extends string>(actions: FigureDragActions<Frame>) {
  const held = useRef<Held<Frame> | undefined>(undefined);
  const end =
    (finish: () => void) =>
    (event: PointerEvent): void => {
      if (held.current?.pointerId !== event.pointerId) return;
      held.current = undefined;
      finish();
    };
  return {
    onPointerDown: (event: PointerEvent & { currentTarget: HTMLElement }): void => {
      const found = heldBy(event, actions.isFrame);
      if (found === undefined || !event.isPrimary || event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current = found;
      actions.grasp();
    },
    onPointerMove: (event: PointerEvent): void => {
      if (held.current?.pointerId !== event.pointerId) return;
      const { id, svg, frame, offset } = held.current;
      const { x, y } = toFigure(svg, event);
      actions.pull(id, { x: x - offset.x, y: y - offset.y }, frame);
    },
    onPointerUp: end(actions.release),
    onPointerCancel: end(actions.cancel),
  };
}

/** The handle under a pointer, if there is one. */
function heldBy<Frame extends string>(
  event: PointerEvent,
  isFrame: (name: string | undefined) => name is Frame,
): Held<Frame> | undefined {
  const handle = event.target instanceof Element ? event.target.closest<SVGGElement>('[data-handle]') : null;
  const svg = handle?.ownerSVGElement;
  const frame = svg?.dataset.frame;
  const id = handle?.dataset.handle;
  if (!svg || id === undefined || !isFrame(frame)) return undefined;
  const { x, y } = toFigure(svg, event);
  const offset = { x: x - Number(handle.dataset.x), y: y - Number(handle.dataset.y) };
  return { id, pointerId: event.pointerId, svg, frame, offset };
}

/** A pointer's place in the units of the figure's view box. */
function toFigure(svg: SVGSVGElement, { clientX, clientY }: PointerEvent): FigurePoint {
  const matrix = svg.getScreenCTM();
  return matrix ? new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse()) : { x: 0, y: 0 };
}
