import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

interface FoldedProps {
  readonly summary: string;
  /** Said after the summary to those who hear the page: of what it is. */
  readonly of?: string;
  /** Whether something inside cannot be used: it then unfolds by itself, and stays so when that is mended. */
  readonly faulty?: boolean;
  readonly class?: string;
  readonly children: ComponentChildren;
}

/** A part that is folded away under its name until it is wanted. */
export function Folded({ summary, of, faulty = false, children, ...rest }: FoldedProps) {
  const [open, setOpen] = useState(false);
  return (
    <details
      class={`folded ${rest.class ?? ''}`.trim()}
      open={open || faulty}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        {summary}
        {of !== undefined && <span class="visually-hidden">{` ${of}`}</span>}
      </summary>
      {children}
    </details>
  );
}
