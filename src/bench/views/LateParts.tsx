import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { BenchAction } from '../state/actions.ts';
import { useLate } from '../use-late.ts';
import { AsWritten } from './AsWritten.tsx';
import type { PartsProps } from './Parts.tsx';

type Parts = typeof import('./Parts.tsx').Parts;

/** What a script that waits for the page can see: until the parts listen, what a reader unfolds there would be drawn anew. */
const LATE = { class: 'late' } as const;
const WOKEN = import.meta.env.SSR ? LATE : ({ class: 'late woken' } as const);

/** On the server the parts are at hand; a browser gets them as written, and their script once it is needed. */
const onServer: Parts | undefined = import.meta.env.SSR ? (await import('./Parts.tsx')).Parts : undefined;

type GivenProps = Omit<PartsProps, 'standing'>;

interface LatePartsProps {
  /** What the parts are drawn from; undefined until there are results. */
  readonly parts: GivenProps | undefined;
  /** Whether the sheet is another one than the page was written with. */
  readonly changed: boolean;
}

/**
 * Everything below the form. It stands there as the server wrote it, and its script is fetched once there are results to draw.
 * From then on it follows a keystroke a breath later, so that the result itself can be there at once.
 */
export function LateParts({ parts, changed }: LatePartsProps) {
  const { send, fromHere } = useOwnActions(parts?.send);
  const standing = useNow(parts);
  const now = useMemo(
    () => parts && { ...parts, send, standing },
    // a list of results is made anew each time: what counts is what stands in it
    parts && [parts.entries, parts.problems, send, parts.measurement, parts.shown, parts.own, ...parts.all],
  );
  const late = useLate(now, fromHere);
  const [Parts, setParts] = useState<{ readonly view: Parts } | undefined>(onServer && { view: onServer });
  const wanted = parts !== undefined && Parts === undefined;
  const entries = parts?.entries;
  useEffect(() => {
    if (!wanted) return;
    import('./Parts.tsx').then(
      ({ Parts: view }) => setParts({ view }),
      () => undefined, // asked for again with the next change
    );
  }, [wanted, entries]);
  const drawn = useMemo(() => Parts && late && <Parts.view {...late} />, [Parts, late]);
  return (
    <AsWritten as="div" stale={changed} attributes={drawn ? WOKEN : LATE}>
      {drawn}
    </AsWritten>
  );
}

/** What the parts would be drawn from at the moment of asking, which those who are drawn from something older can call. */
function useNow(parts: GivenProps | undefined): () => GivenProps {
  const latest = useRef(parts);
  latest.current = parts;
  return useCallback(() => {
    if (!latest.current) throw new Error('nothing is drawn before there are results');
    return latest.current;
  }, []);
}

/** The way to send an action from these parts, and whether the change that is being drawn came by it. */
function useOwnActions(send: ((action: BenchAction) => void) | undefined) {
  const sent = useRef(false);
  const fromHere = sent.current;
  // in the turn of the drawing: an effect a frame would cost a drag a timer each
  useLayoutEffect(() => {
    sent.current = false;
  });
  const own = useCallback(
    (action: BenchAction) => {
      sent.current = true;
      send?.(action);
    },
    [send],
  );
  return { send: own, fromHere };
}
