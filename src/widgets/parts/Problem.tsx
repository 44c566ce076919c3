import type { ComponentChildren } from 'preact';
import { saidUnits } from '../../text/said-units.ts';

interface ProblemProps {
  /** What a field is described by. */
  readonly id?: string;
  /** Off where it is seen only: what is still to be typed is no news to who has just begun. */
  readonly 'aria-live'?: 'off' | undefined;
  readonly children: ComponentChildren;
}

/** What is wrong with what was typed. It stands in the page before it says anything: what comes with its words is not heard. */
export function Problem({ children, ...props }: ProblemProps) {
  const said = typeof children === 'string' ? saidUnits(children) : children;
  return (
    <p class="problem" role="status" {...props}>
      {said === children ? (
        children
      ) : (
        <>
          <span aria-hidden="true">{children}</span>
          <span class="visually-hidden">{said}</span>
        </>
      )}
    </p>
  );
}
