import { type ComponentChildren, Fragment, h, hydrate, render } from 'preact';
import { useEffect, useId, useLayoutEffect, useRef, useState } from 'preact/hooks';

interface InTurnProps {
  /** Must not use a context of what stands round it. */
  readonly children: ComponentChildren;
}

const AS_WRITTEN = { __html: '' };

/**
 * A part of an island that wakes in a turn of its own, so that a large one does not hold up the page for all its parts together. Until
 * then it stands as the server wrote it. The part has a root of its own; what it is given first must be what the server drew.
 */
export const InTurn = import.meta.env.SSR
  ? ({ children }: InTurnProps) => <div class="in-turn">{numbered(children, [useId(), 0])}</div>
  : WokenInTurn;

function WokenInTurn({ children }: InTurnProps) {
  const place = useRef<HTMLDivElement>(null);
  const written = useRef(children);
  const drawn = useRef<ComponentChildren>();
  const numbers = useRef<Numbers>([useId(), 0]);
  const [isAwake, setAwake] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setAwake(true));
    return () => clearTimeout(timer);
  }, []);
  useLayoutEffect(() => {
    const root = place.current;
    // what comes later, where nothing was written, is there at once
    if (root === null || (!isAwake && root.hasChildNodes() && drawn.current === undefined)) return;
    if (drawn.current === undefined) hydrate(numbered(written.current, numbers.current), root);
    if (children !== (drawn.current ?? written.current)) render(numbered(children, numbers.current), root);
    drawn.current = children;
  }, [isAwake, children]);
  useEffect(() => {
    const root = place.current;
    return () => {
      if (root) render(null, root);
    };
  }, []);
  return (
    <div
      ref={place}
      class="in-turn"
      data-woken={isAwake ? '' : undefined}
      dangerouslySetInnerHTML={AS_WRITTEN}
    />
  );
}

/** What ids begin with, and how many there are. */
type Numbers = [string, number];

/** With ids that are counted by itself, on the server as here; `__m` is where `useId` looks, and where renderers of islands set it. */
const numbered = (children: ComponentChildren, numbers: Numbers) =>
  Object.assign(h(Fragment, null, children), { __m: numbers });
