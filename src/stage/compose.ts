import { keepTalk, keptTalk } from '../store/talk.ts';
import { onFiles } from './compose-files.ts';
import { listItem } from './compose-item.ts';
import { composeStrings as strings } from './compose-strings.ts';
import { isPart, MOST_PARTS, movedBy, type Part, readTalk, talkQuery, withoutAt, withPart } from './talk.ts';

const found = <Of extends HTMLElement>(selector: string): Of => {
  const node = document.querySelector<Of>(selector);
  if (node === null) throw new Error(`compose: wish ${selector}, got none`);
  return node;
};

/** The name of each step that can be picked, from the page itself. */
const namesOf = (buttons: readonly HTMLElement[]): ReadonlyMap<Part, string> =>
  new Map(buttons.map(({ dataset }) => [dataset.part ?? '', dataset.name ?? '']));

/** Makes the page on which steps are picked work: the talk is in its list, in the address of its link, and kept in the browser. */
export function startCompose(): void {
  const buttons = [...document.querySelectorAll<HTMLElement>('[data-part]')];
  const names = namesOf(buttons);
  const nameOf = (part: Part): string => names.get(part) ?? strings.missing(part);
  let parts: readonly Part[] = [];
  const say = (words: string): void => {
    found('#talk-says').textContent = words;
  };
  const change = (next: readonly Part[], words: string): void => {
    parts = next;
    draw(parts, nameOf, onAction);
    say(keepTalk(parts) ? words : `${words} ${strings.notKept}`);
  };
  const onAction = (action: string, at: number): void => {
    const part = parts[at] ?? '';
    const by = { up: -1, down: 1 }[action];
    if (by === undefined) change(withoutAt(parts, at), strings.removed(nameOf(part)));
    else change(movedBy(parts, at, by), strings.moved(Math.min(parts.length, Math.max(1, at + by + 1))));
    const places = document.querySelectorAll<HTMLElement>(`#talk-list [data-action="${action}"]`);
    (places[Math.min(places.length - 1, Math.max(0, at + (by ?? 0)))] ?? found('#talk')).focus();
  };
  for (const button of buttons)
    button.addEventListener('click', () => {
      const part = button.dataset.part ?? '';
      const longer = withPart(parts, part);
      if (longer === parts) say(strings.tooMany(MOST_PARTS));
      else change(longer, strings.added(nameOf(part)));
    });
  onFiles({ parts: () => parts, say, take: (next) => change(next, strings.opened(next.length)) });
  const named = readTalk(location.search);
  parts = named.length > 0 ? named : keptTalk().filter(isPart);
  draw(parts, nameOf, onAction);
}

function draw(
  parts: readonly Part[],
  nameOf: (part: Part) => string,
  onAction: (action: string, at: number) => void,
): void {
  found('#talk-list').replaceChildren(
    ...parts.map((part, at) => listItem({ name: nameOf(part), at, of: parts.length, onAction })),
  );
  found('#talk-none').hidden = parts.length > 0;
  const show = found<HTMLAnchorElement>('#talk-show');
  show.href = `../talk/${talkQuery(parts)}`;
  found<HTMLInputElement>('#talk-address').value = show.href;
  for (const node of document.querySelectorAll<HTMLElement>('.talk-has')) node.hidden = parts.length === 0;
}
