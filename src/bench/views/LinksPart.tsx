import { useEffect, useRef } from 'preact/hooks';
import { controlId } from '../keys.ts';
import type { BenchAction, Taken } from '../state.ts';
import { strings } from '../strings.ts';
import { AddLink } from './AddLink.tsx';
import type { PartProps } from './context.ts';
import { actionId } from './LinkActions.tsx';
import { LinkItem } from './LinkItem.tsx';

const BRING_BACK = controlId('bring-back');

/** All links in their order, with buttons to add one and to bring back what was removed last. */
export function LinksPart({ entries, problems, send, taken }: PartProps & { taken: Taken | undefined }) {
  const { links } = entries;
  const act = useFocusAfter(send);
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.links}</legend>
      <p class="measure">{strings.links.intro}</p>
      {links.length === 0 && <p>{strings.links.none}</p>}
      <ol class="links">
        {links.map((link, index) => (
          <LinkItem
            key={link.id}
            link={link}
            problems={problems}
            send={act}
            position={index + 1}
            count={links.length}
          />
        ))}
      </ol>
      <AddLink count={links.length} send={send} />
      {taken && (
        <p>
          <button type="button" id={BRING_BACK} onClick={() => send({ type: 'bringBack' })}>
            {taken.what === 'link' ? strings.bringBack.link(taken.link.label) : strings.bringBack.sheet}
          </button>
        </p>
      )}
    </fieldset>
  );
}

/** Sends an action and keeps the focus at hand: on the moved link's button, or on what brings a removed one back. */
function useFocusAfter(send: (action: BenchAction) => void) {
  const wanted = useRef<readonly string[]>([]);
  useEffect(() => {
    const controls = wanted.current.map((id) => document.getElementById(id));
    wanted.current = [];
    controls.find((control) => control !== null && !control.matches(':disabled'))?.focus();
  });
  return (action: BenchAction): void => {
    if (action.type === 'move') {
      const [first, second] = action.by === -1 ? (['up', 'down'] as const) : (['down', 'up'] as const);
      wanted.current = [actionId(action.id, first), actionId(action.id, second)];
    }
    if (action.type === 'remove') wanted.current = [BRING_BACK];
    send(action);
  };
}
