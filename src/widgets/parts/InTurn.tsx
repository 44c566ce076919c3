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
  const root = useRef<HTMLDivElement>();
  const latest = useRef(children);
  const written = useRef(children);
  const numbers = useRef<Numbers>([useId(), 0]);
  const [isAwake, setAwake] = useState(false);
  useEffect(() => {
    const own = place.current;
    const timer = setTimeout(() => setAwake(true));
    return () => {
      clearTimeout(timer);
      if (own) render(null, own);
    };
  }, []);
  useLayoutEffect(() => {
    // what comes later, where nothing was written, is there at once
    if (root.current || !place.current || (!isAwake && place.current.hasChildNodes())) return;
    root.current = place.current;
    hydrate(numbered(written.current, numbers.current), root.current);
    if (latest.current !== written.current) render(numbered(latest.current, numbers.current), root.current);
  }, [isAwake]);
  // as what stands round it is drawn, so that whatever looks for a field afterwards finds it
  if (root.current && latest.current !== children) render(numbered(children, numbers.current), root.current);
  latest.current = children;
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
