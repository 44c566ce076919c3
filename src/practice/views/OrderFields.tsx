import { useRef, useState } from 'preact/hooks';
import type { OrderPayload } from '../../questions/bank/types.ts';
import { saidText } from '../../text/said-text.ts';
import { type Given, movedItem } from '../answering.ts';
import { strings } from '../strings.ts';

interface OrderFieldsProps {
  readonly payload: OrderPayload;
  readonly order: readonly string[];
  readonly onGiven: (given: Given) => void;
  readonly isDone: boolean;
}

/** An item as it is spoken, where a comma would part a number in two. */
const said = (text: string): string => saidText(text.replace(/(\d),(\d)/g, '$1.$2'));

/** A list whose items move by a button each way. The focus stays on the item that is moved, and its new place is spoken. */
export function OrderFields({ payload, order, onGiven, isDone }: OrderFieldsProps) {
  const [told, setTold] = useState('');
  const list = useRef<HTMLOListElement>(null);
  const items = order.flatMap((id) => payload.items.filter((item) => item.id === id));
  const move = (id: string, by: -1 | 1): void => {
    const next = movedItem(order, id, by);
    const text = items.find((item) => item.id === id)?.text ?? '';
    onGiven(next);
    setTold(strings.form.moved({ text: said(text), place: next.indexOf(id) + 1, of: next.length }));
    requestAnimationFrame(() => {
      const row = list.current?.children[next.indexOf(id)];
      const [up, down] = row?.querySelectorAll('button') ?? [];
      // at the end of the list the way back is the only one left
      const usual = by < 0 ? up : down;
      (usual?.disabled ? (by < 0 ? down : up) : usual)?.focus();
    });
  };
  return (
    <div class="ask-order">
      <p class="muted">{payload.first}</p>
      <ol ref={list}>
        {items.map(({ id, text }, at) => (
          <li key={id}>
            <span>{text}</span>
            <span class="needs-script ask-moves">
              <button
                type="button"
                disabled={isDone || at === 0}
                aria-label={strings.form.up(said(text))}
                onClick={() => move(id, -1)}
              >
                ↑
              </button>
              <button
                type="button"
                disabled={isDone || at === items.length - 1}
                aria-label={strings.form.down(said(text))}
                onClick={() => move(id, 1)}
              >
                ↓
              </button>
            </span>
          </li>
        ))}
      </ol>
      <p class="muted">{payload.last}</p>
      <p class="visually-hidden" role="status">
        {told}
      </p>
    </div>
  );
}
