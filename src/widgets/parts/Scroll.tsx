import type { ComponentChildren } from 'preact';

/** A wide table that scrolls by itself on a narrow screen, reachable by keyboard. */
export function Scroll({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    <section class="scroll" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
