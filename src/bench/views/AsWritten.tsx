import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

interface AsWrittenProps {
  readonly as: 'div' | 'section' | 'p';
  /** What to draw; undefined until its script is there. */
  readonly children: ComponentChildren | undefined;
  /** Whether what the server wrote is out of date, and so is not to be seen. */
  readonly stale: boolean;
  readonly attributes: {
    readonly class?: string;
    readonly 'aria-labelledby'?: string;
    readonly 'aria-hidden'?: true;
  };
}

const AS_WRITTEN = { __html: '' };

/** What can have the focus. */
const CONTROLS = 'a[href], button, input, select, textarea, summary, [tabindex]';

/**
 * A part that stands as the server wrote it until its script is there: while a page wakes, Preact leaves alone what stands in
 * an element whose markup is given. Then it is drawn anew, and what had the focus has it again.
 */
export function AsWritten({ as: Tag, children, stale, attributes }: AsWrittenProps) {
  const place = useRef<HTMLElement>(null);
  const held = useRef(-1);
  const isDrawn = children !== undefined;
  const wasDrawn = useRef(isDrawn);
  if (isDrawn && !wasDrawn.current) held.current = placeOfFocus(place.current);
  useLayoutEffect(() => {
    wasDrawn.current = isDrawn;
    if (held.current >= 0) controlsOf(place.current)[held.current]?.focus({ preventScroll: true });
    held.current = -1;
  }, [isDrawn]);
  // `as never`: which tag it is, and so which element the reference holds, is known only when it is drawn
  return isDrawn ? (
    <Tag {...attributes} ref={place as never}>
      {children}
    </Tag>
  ) : (
    <Tag {...attributes} ref={place as never} hidden={stale} dangerouslySetInnerHTML={AS_WRITTEN} />
  );
}

const controlsOf = (part: HTMLElement | null): HTMLElement[] => [
  ...(part?.querySelectorAll<HTMLElement>(CONTROLS) ?? []),
];

/** Which of a part's controls has the focus, counted from 0; -1 where none has. */
const placeOfFocus = (part: HTMLElement | null): number =>
  controlsOf(part).indexOf(document.activeElement as HTMLElement);
