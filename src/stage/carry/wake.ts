import { h, hydrate, type VNode } from 'preact';
import { startDeck } from '../deck.ts';
import { CARRIED } from './assemble.ts';
import { components } from './components.ts';
import { revived } from './revive.ts';

/** Ids are made from the number of the island: the same one as where the page was built, or labels would lose their fields. */
function withIds(node: VNode, island: string): VNode {
  const mask = [Number(island), 0];
  return Object.assign(node, { _mask: mask, __m: mask });
}

/** Wakes every island of a carried file and makes its steps a deck. */
export function wake(): void {
  for (const place of document.querySelectorAll<HTMLElement>(CARRIED)) {
    const { name = '', props = '{}', island = '0' } = place.dataset;
    const Component = components[name];
    if (Component !== undefined) hydrate(withIds(h(Component, revived(props)), island), place);
  }
  const deck = document.querySelector<HTMLElement>('#deck');
  if (deck) startDeck(deck);
}
