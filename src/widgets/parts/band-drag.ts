import { useRef } from 'preact/hooks';
import { type BandFrame, isBandFrame } from '../../figures/reading-band.frame.ts';

export interface BandDragActions {
  readonly grasp: () => void;
  /** A handle was moved to this coordinate of the view box of its figure, drawn in this frame. */
  readonly pull: (id: string, x: number, frame: BandFrame) => void;
  readonly release: () => void;
  readonly cancel: () => void;
}

interface Held {
  readonly id: string;
  /** Only this one counts: another finger may come down on the figure meanwhile. */
  readonly pointerId: number;
  readonly frame: BandFrame;
  /** From the window to the figure: what is measured anew with each movement would have the page laid out first. */
  readonly toFigure: DOMMatrix;
  readonly offset: number;
  readonly answers: HTMLElement | null | undefined;
}

/**
 * Dragging of the handles in a figure (groups with `data-handle`) by pointer events on the element around it. The pointer is
 * captured; a touch that scrolls the page instead cancels, and then everything is as before. `heldIn` is the frame of the figure whose
 * handle is held: each of these actions has the figure drawn again.
 */
export function useBandDrag({ grasp, pull, release, cancel }: BandDragActions) {
  const held = useRef<Held | undefined>(undefined);
  const end =
    (finish: () => void) =>
    (event: PointerEvent): void => {
      if (held.current?.pointerId !== event.pointerId) return;
      held.current.answers?.removeAttribute('style');
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
      const { pointerId } = event;
      event.currentTarget.setPointerCapture(pointerId);
      const toFigure = svg.getScreenCTM()?.inverse() ?? new DOMMatrix();
      const offset = along(toFigure, event) - Number(handle.dataset.end);
      // a box of one size while it is held: another number in it then moves nothing else, and the page need not be laid out for it
      const answers = event.currentTarget.parentElement?.querySelector<HTMLElement>('.answers');
      if (answers) answers.style.cssText = `contain:size layout;height:${answers.offsetHeight}px`;
      held.current = { id, pointerId, frame, toFigure, offset, answers };
      grasp();
    },
    onPointerMove: (event: PointerEvent): void => {
      if (held.current?.pointerId !== event.pointerId) return;
      const { id, frame, toFigure, offset } = held.current;
      pull(id, along(toFigure, event) - offset, frame);
    },
    onPointerUp: end(release),
    onPointerCancel: end(cancel),
  };
  return { handlers, heldIn: held.current?.frame };
}

/** A pointer's x in the units of the figure's view box: figures are never turned, so that y does not come in. */
const along = ({ a, e }: DOMMatrix, { clientX }: PointerEvent): number => a * clientX + e;
