import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { partStrings as strings } from '../part-strings.ts';
import { Fetching } from './Fetching.tsx';
import { useFetched } from './use-fetched.ts';

interface FetchedPartProps<Module> {
  /** Id of the heading. */
  readonly id: string;
  readonly heading: string;
  readonly intro: string;
  /** What stands on the fold. */
  readonly fold: string;
  readonly load: () => Promise<Module>;
  /** What is inside, once it is fetched, and whether it is unfolded: what is folded away should not work. */
  readonly children: (module: Module, open: boolean) => VNode;
}

/** A part under a heading of its own whose insides are fetched when it is first unfolded. */
export function FetchedPart<Module>({ id, heading, intro, fold, load, children }: FetchedPartProps<Module>) {
  const [open, setOpen] = useState(false);
  const { module, failed, again } = useFetched(load, open);
  return (
    <section class="needs-script defence" aria-labelledby={id}>
      <h2 id={id}>{heading}</h2>
      <p class="measure">{intro}</p>
      <details class="folded" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{fold}</summary>
        {module !== undefined && children(module, open)}
        {module === undefined && (
          <Fetching failed={failed} again={again} waiting={open ? strings.fetching : ''} />
        )}
      </details>
    </section>
  );
}
