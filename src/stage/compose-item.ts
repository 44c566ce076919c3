import { composeStrings as strings } from './compose-strings.ts';

interface Item {
  readonly name: string;
  readonly at: number;
  readonly of: number;
  readonly onAction: (action: string, at: number) => void;
}

/** A step of the talk as it stands in the list, with what can be done to it. */
export function listItem({ name, at, of, onAction }: Item): HTMLLIElement {
  const item = document.createElement('li');
  const words = document.createElement('span');
  words.textContent = name;
  const button = (action: string, sign: string, label: string, isOff: boolean): HTMLButtonElement => {
    const node = document.createElement('button');
    node.type = 'button';
    node.dataset.action = action;
    node.textContent = sign;
    node.setAttribute('aria-label', label);
    node.setAttribute('aria-disabled', String(isOff));
    node.addEventListener('click', () => isOff || onAction(action, at));
    return node;
  };
  item.append(
    words,
    button('up', '↑', strings.up(name), at === 0),
    button('down', '↓', strings.down(name), at === of - 1),
    button('out', '×', strings.remove(name), false),
  );
  return item;
}
