import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface NamedSvgProps {
  readonly class: string;
  readonly size: { readonly width: number; readonly height: number };
  /** The figure: its name and what it shows now, for those who do not see it, and its frame where others have to tell it. */
  readonly of: { readonly name: string; readonly description: string; readonly frame?: string };
  readonly children: ComponentChildren;
}

/** What each figure is drawn in: a picture with a name and a description. */
export function NamedSvg({ class: className, size, of, children }: NamedSvgProps) {
  const id = useId();
  return (
    <svg
      class={className}
      data-frame={of.frame}
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-labelledby={`${id}t`}
      aria-describedby={`${id}d`}
    >
      <title id={`${id}t`}>{of.name}</title>
      <desc id={`${id}d`}>{of.description}</desc>
      {children}
    </svg>
  );
}
