import { actionId } from '../form/focus-after.ts';
import { MOST_LINKS } from '../read/spec.ts';
import { strings } from '../strings.ts';
import type { LinkItemProps } from './LinkItem.tsx';

/** Buttons that move a link in the order, double it and take it out: the keyboard's road to what dragging does. */
export function LinkActions({
  link,
  position,
  count,
  name,
  send,
}: Pick<LinkItemProps, 'link' | 'position' | 'count' | 'send'> & { name: string }) {
  const { id } = link;
  const words = strings.link;
  const buttons = [
    {
      does: 'up',
      text: words.up,
      label: words.upOf(name),
      disabled: position === 1,
      act: () => send({ type: 'move', id, to: position - 2 }),
    },
    {
      does: 'down',
      text: words.down,
      label: words.downOf(name),
      disabled: position === count,
      act: () => send({ type: 'move', id, to: position }),
    },
    {
      does: 'duplicate',
      text: words.duplicate,
      label: words.duplicateOf(name),
      disabled: count >= MOST_LINKS,
      act: () => send({ type: 'duplicate', id, label: words.copyOf(name) }),
    },
    {
      does: 'remove',
      text: words.remove,
      label: words.removeOf(name),
      disabled: false,
      act: () => send({ type: 'remove', id }),
    },
  ] as const;
  return (
    <p class="link-actions">
      {buttons.map(({ does, text, label, disabled, act }) => (
        <button
          key={does}
          type="button"
          class="plain"
          id={actionId(id, does)}
          aria-label={label}
          disabled={disabled}
          onClick={act}
        >
          {text}
        </button>
      ))}
    </p>
  );
}
