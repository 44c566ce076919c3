import { useEffect, useState } from 'preact/hooks';

/** Rest after the last change before it is spoken: a drag says one sentence, not fifty. */
const REST_MS = 500;

interface AnnouncerProps {
  readonly summary: string;
  /** Summary of the state that the page was opened with, where it is not there from the first drawing on. */
  readonly opening?: string | undefined;
}

/** Speaks the settled summary of a widget, once, after a moment of rest; silent until something changes. */
export function Announcer({ summary, opening }: AnnouncerProps) {
  const [spoken, setSpoken] = useState('');
  const [drawn] = useState(summary);
  const first = opening ?? drawn;
  useEffect(() => {
    const timer = setTimeout(
      () => setSpoken((before) => (before === '' && summary === first ? '' : summary)),
      REST_MS,
    );
    return () => clearTimeout(timer);
  }, [summary, first]);
  return (
    <p class="visually-hidden" role="status" aria-live="polite">
      {spoken}
    </p>
  );
}
