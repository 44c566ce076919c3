import { useEffect, useRef, useState } from 'preact/hooks';
import type { OrderPayload } from '../../questions/bank/types.ts';
import { type Given, movedItem } from '../answering.ts';
import { said } from '../said.ts';
import { strings } from '../strings.ts';

interface OrderFieldsProps {
  readonly payload: OrderPayload;
  readonly order: readonly string[];
  readonly onGiven: (given: Given) => void;
  readonly isDone: boolean;
}

/** A list whose items move by a button each way. The focus stays on the item that is moved, whose button names it, and its new place is spoken. */
export function OrderFields({ payload, order, onGiven, isDone }: OrderFieldsProps) {
  const [told, setTold] = useState('');
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => setTold(''), [isDone]); // the place of an item is no news any more
  const items = order.flatMap((id) => payload.items.filter((item) => item.id === id));
  const move = (id: string, by: -1 | 1): void => {
    const next = movedItem(order, id, by);
    onGiven(next);
    setTold(strings.form.moved({ place: next.indexOf(id) + 1, of: next.length }));
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
