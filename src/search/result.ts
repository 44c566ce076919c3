import type { Hit } from './engine.ts';
import { lineOf } from './line.ts';
import { strings } from './strings.ts';

function element(tag: string, name: string, text = ''): HTMLElement {
  const made = document.createElement(tag);
  if (name !== '') made.className = name;
  made.textContent = text;
  return made;
}

/** Where a hit leads: to the part of the page that the line is from, where the hit has no place of its own. */
export const hrefOf = (path: string, at: string): string =>
  at === '' || path.includes('#') ? path : `${path}#${at}`;

/** A result: what kind of thing it is, the link to it, and a line of its text. Texts are only ever set as text. */
export function resultOf({ kind, title, path, parts, terms }: Hit, base: string): HTMLElement {
  const line = lineOf(parts, terms);
  const link = document.createElement('a');
  link.href = base + hrefOf(path, line.at);
  link.textContent = title;
  const head = element('p', 'found-head');
  head.append(element('span', 'found-kind', `${strings.kinds[kind]}:`), ' ', link);
  const text = element('p', 'found-line');
  if (line.title !== '') text.append(element('span', 'muted', `${line.title} · `));
  for (const { text: piece, isHit } of line.pieces) text.append(isHit ? element('mark', '', piece) : piece);
  const item = document.createElement('li');
  item.append(head, text);
  return item;
}
