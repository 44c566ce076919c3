import { controlId, linkPath } from '../keys.ts';
import { strings } from '../strings.ts';
import type { LinkItemProps } from './LinkItem.tsx';

/** Id of a button of a link, so that the focus can stay on it when the order changes. */
export const actionId = (id: string, action: 'up' | 'down' | 'remove'): string =>
  controlId(linkPath(id, action));

/** Buttons that move a link in the order and take it out. */
export function LinkActions({
  link,
  position,
  count,
  name,
  send,
}: Pick<LinkItemProps, 'link' | 'position' | 'count' | 'send'> & { name: string }) {
  const label = (words: string): string => `${words}: ${name}`;
  return (
    <p class="link-actions">
      <button
        type="button"
        class="plain"
        id={actionId(link.id, 'up')}
        aria-label={label(strings.link.up)}
        disabled={position === 1}
        onClick={() => send({ type: 'move', id: link.id, by: -1 })}
      >
        {strings.link.up}
      </button>
      <button
        type="button"
        class="plain"
        id={actionId(link.id, 'down')}
        aria-label={label(strings.link.down)}
        disabled={position === count}
        onClick={() => send({ type: 'move', id: link.id, by: 1 })}
      >
        {strings.link.down}
      </button>
      <button
        type="button"
        class="plain"
        id={actionId(link.id, 'remove')}
        aria-label={label(strings.link.remove)}
        onClick={() => send({ type: 'remove', id: link.id })}
      >
        {strings.link.remove}
      </button>
    </p>
  );
}
