import { useEffect, useState } from 'preact/hooks';

/** Rest after the last change before it is spoken: a drag says one sentence, not fifty. */
const REST_MS = 500;

/** Speaks the settled summary of a widget, once, after a moment of rest; silent until something changes. */
export function Announcer({ summary }: { summary: string }) {
  const [spoken, setSpoken] = useState('');
  const [first] = useState(summary);
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
