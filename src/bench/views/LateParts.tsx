import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useLate } from '../use-late.ts';
import type { PartsProps } from './Parts.tsx';

type Parts = typeof import('./Parts.tsx').Parts;

/** What a script that waits for the page can see: until the parts listen, what a reader unfolds there would be drawn anew. */
const WOKEN = import.meta.env.SSR ? 'late' : 'late woken';

/** On the server the parts are at hand; a browser gets them as written, and their script once it is needed. */
const onServer: Parts | undefined = import.meta.env.SSR ? (await import('./Parts.tsx')).Parts : undefined;

/**
 * Everything below the form. It stands there as the server wrote it, and its script is fetched once the form
 * listens. From then on it follows a keystroke a breath later, so that the result itself can be there at once.
 */
export function LateParts(props: PartsProps) {
  const { entries, problems, send, measurement, shown, all } = props;
  const now = useMemo(
    () => props,
    // a list of results is made anew each time: what counts is what stands in it
    [entries, problems, send, measurement, shown, ...all],
  );
  const late = useLate(now);
  const [Parts, setParts] = useState<{ readonly view: Parts } | undefined>(onServer && { view: onServer });
  const first = useRef(measurement);
  useEffect(() => {
    if (Parts !== undefined) return;
    import('./Parts.tsx').then(
      ({ Parts: view }) => setParts({ view }),
      () => undefined, // asked for again with the next change
    );
  }, [Parts, entries]);
  const drawn = useMemo(() => Parts && <Parts.view {...late} />, [Parts, late]);
  return drawn === undefined ? (
    // While it wakes, Preact leaves alone what stands in an element whose markup is given. What is out of date is not shown.
    <div class="late" hidden={measurement !== first.current} dangerouslySetInnerHTML={AS_WRITTEN} />
  ) : (
    <div class={WOKEN}>{drawn}</div>
  );
}

const AS_WRITTEN = { __html: '' };
