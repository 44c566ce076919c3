import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useLate } from '../use-late.ts';
import type { PartsProps } from './Parts.tsx';

type Parts = typeof import('./Parts.tsx').Parts;

/** Near enough that a reader who moves on by the keyboard finds the parts awake: what they stand on is drawn anew then. */
const NEARLY_IN_VIEW = '1500px';

/** On the server the parts are at hand; a browser gets them as written, and their script once it is needed. */
const onServer: Parts | undefined = import.meta.env.SSR ? (await import('./Parts.tsx')).Parts : undefined;

/**
 * Everything below the form. It stands there as the server wrote it, and its script is fetched when it comes into view or has to
 * change. From then on it follows a keystroke a breath later, so that the result itself can be there at once.
 */
export function LateParts(props: PartsProps) {
  const { entries, problems, send, measurement, shown, all } = props;
  const now = useMemo(
    () => props,
    // a list of results is made anew each time: what counts is what stands in it
    [entries, problems, send, measurement, shown, ...all],
  );
  const late = useLate(now);
  const first = useRef(entries);
  const place = useRef<HTMLDivElement>(null);
  const [Parts, setParts] = useState<{ readonly view: Parts } | undefined>(onServer && { view: onServer });
  const isNeeded = entries !== first.current;
  useEffect(() => {
    if (Parts !== undefined || place.current === null) return undefined;
    const fetchParts = async (): Promise<void> => {
      const { Parts: view } = await import('./Parts.tsx');
      setParts({ view });
    };
    if (isNeeded) {
      void fetchParts();
      return undefined;
    }
    const seen = new IntersectionObserver(
      (found) => {
        if (!found.some(({ isIntersecting }) => isIntersecting)) return;
        seen.disconnect();
        void fetchParts();
      },
      { rootMargin: NEARLY_IN_VIEW },
    );
    seen.observe(place.current);
    return () => seen.disconnect();
  }, [Parts, isNeeded]);
  const drawn = useMemo(() => Parts && <Parts.view {...late} />, [Parts, late]);
  return drawn === undefined ? (
    // While it wakes, Preact leaves alone what stands in an element whose markup is given.
    <div ref={place} class="late" dangerouslySetInnerHTML={AS_WRITTEN} />
  ) : (
    <div ref={place} class="late">
      {drawn}
    </div>
  );
}

const AS_WRITTEN = { __html: '' };
