import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';

/** A link that is dragged: from which place in the order, and where it would land now. */
export interface DraggedLink {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** Nearer to the edge of the window than this, in CSS pixels, the page scrolls on; and how far with each frame. */
const EDGE_PX = 72;
const STEP_PX = 9;

/** Where a link dropped at this height lands among the others, whose middles are given from top to bottom. */
export const landingPlace = (y: number, middlesOfOthers: readonly number[]): number =>
  middlesOfOthers.filter((middle) => middle < y).length;

/** How the item at a place in the order stands while a link is dragged. */
export function landingMark(
  dragged: DraggedLink | undefined,
  index: number,
): 'held' | 'before' | 'after' | undefined {
  if (dragged === undefined) return undefined;
  if (index === dragged.from) return 'held';
  if (index !== dragged.to) return undefined;
  return dragged.to < dragged.from ? 'before' : 'after';
}

/** How far the page should scroll with the next frame while the pointer is at this height of a window so high. */
export const scrollStep = (y: number, heightPx: number): number =>
  y < EDGE_PX ? -STEP_PX : y > heightPx - EDGE_PX ? STEP_PX : 0;

/** Where the pointer is, where it took the grip, and of which link that is. Another finger on the list meanwhile does not count. */
interface Pointer {
  y: number;
  readonly pointerId: number;
  readonly gripY: number;
  readonly gripOf: string;
}

interface LinkDragProps {
  readonly list: RefObject<HTMLOListElement>;
  readonly order: readonly string[];
  readonly move: (id: string, to: number) => void;
}

/**
 * Dragging of links by their grips (`data-grip`). While one is held the list shows names only, so that a long chain is in reach; the
 * pointer is captured, and nothing changes before it is let go. A cancelled pointer or Escape leaves everything as it was. Only the
 * grip keeps a finger from scrolling (`touch-action`).
 */
export function useLinkDrag({ list, order, move }: LinkDragProps) {
  const [dragged, setDragged] = useState<DraggedLink>();
  const held = useRef<DraggedLink>();
  const pointer = useRef<Pointer>({ y: 0, pointerId: -1, gripY: 0, gripOf: '' });
  const set = (next: DraggedLink | undefined): void => {
    held.current = next;
    setDragged(next);
  };
  const follow = (): void => {
    const now = held.current;
    if (now === undefined || list.current === null) return;
    const to = landingPlace(pointer.current.y, middles(list.current, now.id));
    if (to !== now.to) set({ ...now, to });
  };
  const isHeldBy = ({ pointerId }: PointerEvent): boolean => pointer.current.pointerId === pointerId;
  const end = (drop: boolean): void => {
    const last = held.current;
    if (last === undefined) return;
    set(undefined);
    if (drop && last.to !== last.from) move(last.id, last.to);
  };
  useGripUnderPointer({ list, pointer, heldId: dragged?.id, follow });
  useWhileHeld({ active: dragged !== undefined, pointer, follow, cancel: () => end(false) });
  return {
    dragged,
    handlers: {
      onPointerDown: (event: PointerEvent & { currentTarget: HTMLElement }): void => {
        const grip =
          event.target instanceof Element ? event.target.closest<HTMLElement>('[data-grip]') : null;
        const id = grip?.dataset.grip;
        const from = id === undefined ? -1 : order.indexOf(id);
        if (id === undefined || from < 0 || !event.isPrimary || event.button !== 0) return;
        event.preventDefault();
        event.currentTarget.setPointerCapture(event.pointerId);
        const { pointerId, clientY } = event;
        pointer.current = { y: clientY, pointerId, gripY: clientY, gripOf: id };
        set({ id, from, to: from });
      },
      onPointerMove: (event: PointerEvent): void => {
        if (!isHeldBy(event)) return;
        pointer.current.y = event.clientY;
        follow();
      },
      onPointerUp: (event: PointerEvent) => isHeldBy(event) && end(true),
      onPointerCancel: (event: PointerEvent) => isHeldBy(event) && end(false),
      onLostPointerCapture: (event: PointerEvent) => isHeldBy(event) && end(false),
    },
  };
}

/** Heights of the middles of all items but one. */
const middles = (list: HTMLElement, except: string): readonly number[] =>
  [...list.querySelectorAll<HTMLElement>('[data-link]')]
    .filter((item) => item.dataset.link !== except)
    .map((item) => {
      const { top, bottom } = item.getBoundingClientRect();
      return (top + bottom) / 2;
    });

interface GripProps {
  readonly list: RefObject<HTMLElement>;
  readonly pointer: RefObject<Pointer>;
  readonly heldId: string | undefined;
  readonly follow: () => void;
}

/** When the list folds or unfolds, the page scrolls so that the grip is where it was; then a pointer that went on is followed. */
function useGripUnderPointer({ list, pointer, heldId, follow }: GripProps): void {
  const before = useRef(heldId);
  useLayoutEffect(() => {
    if (before.current === heldId) return;
    before.current = heldId;
    if (pointer.current === null) return;
    const { gripY, y, gripOf } = pointer.current;
    const box = list.current?.querySelector(`[data-grip="${gripOf}"]`)?.getBoundingClientRect();
    const wanted = heldId === undefined ? y : gripY;
    if (box) window.scrollBy({ top: (box.top + box.bottom) / 2 - wanted, behavior: 'instant' });
    follow();
  });
}

interface WhileHeldProps {
  readonly active: boolean;
  readonly pointer: RefObject<Pointer>;
  readonly follow: () => void;
  readonly cancel: () => void;
}

/** While a link is held: the page scrolls on near the edges of the window, and Escape gives up. */
function useWhileHeld(props: WhileHeldProps): void {
  const latest = useRef(props);
  latest.current = props;
  const { active } = props;
  useEffect(() => {
    if (!active) return;
    const step = (): void => {
      const by = scrollStep(latest.current.pointer.current?.y ?? EDGE_PX, window.innerHeight);
      if (by !== 0) {
        window.scrollBy({ top: by, behavior: 'instant' });
        latest.current.follow();
      }
      frame = requestAnimationFrame(step);
    };
    let frame = requestAnimationFrame(step);
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') latest.current.cancel();
    };
    window.addEventListener('keydown', onKey);
    return () => {
      cancelAnimationFrame(frame);
      window.removeEventListener('keydown', onKey);
    };
  }, [active]);
}
