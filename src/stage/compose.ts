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
function namer(buttons: readonly HTMLElement[]): (part: Part) => string {
  const names = new Map(buttons.map(({ dataset }) => [dataset.part, dataset.name ?? '']));
  return (part) => names.get(part) ?? strings.missing(part);
}

const keptParts = (): readonly Part[] => keptTalk().filter(isPart);

const isSame = (one: readonly Part[], other: readonly Part[]): boolean => talkQuery(one) === talkQuery(other);

/** Tells what was done; with the way back to another talk, where one was there before. */
function say(words: string, before: readonly Part[] = []): void {
  const told = found('#talk-says');
  told.textContent = words;
  if (before.length === 0) return;
  const back = document.createElement('a');
  back.href = talkQuery(before);
  back.textContent = strings.before;
  told.append(' ', back, '.');
}

/** Makes the page on which steps are picked work: the talk is in its list, in the address of its link, and kept in the browser. */
export function startCompose(): void {
  const buttons = [...document.querySelectorAll<HTMLElement>('[data-part]')];
  const nameOf = namer(buttons);
  const named = readTalk(location.search);
  let parts = named.length > 0 ? named : keptParts();
  /** Whether what stands here is what is kept, and goes with it. */
  let isKept = named.length === 0;
  const show = (next: readonly Part[]): void => {
    parts = next;
    draw(parts, nameOf, onAction);
  };
  /** Takes over what another window has kept meanwhile, and answers whether there was anything: its steps are not undone, nor are those here. */
  const follow = (): boolean => {
    const [before, kept] = [parts, keptParts()];
    if (!isKept || isSame(kept, before)) return false;
    show(kept);
    say(strings.elsewhere(kept.length), before);
    return true;
  };
  const change = (next: readonly Part[], words: string): void => {
    const before = keptParts();
    const isOver = !isKept && before.length > 0 && !isSame(before, next);
    show(next);
    isKept = keepTalk(parts);
    if (!isKept) say(`${words} ${strings.notKept}`);
    else if (isOver) say(`${words} ${strings.instead}`, before);
    else say(words);
  };
  const onAction = (action: string, at: number): void => {
    if (follow()) return; // it stands elsewhere now
    const part = parts[at] ?? '';
    const by = { up: -1, down: 1 }[action];
    if (by === undefined) change(withoutAt(parts, at), strings.removed(nameOf(part)));
    else change(movedBy(parts, at, by), strings.moved(Math.min(parts.length, Math.max(1, at + by + 1))));
    const places = document.querySelectorAll<HTMLElement>(`#talk-list [data-action="${action}"]`);
    (places[Math.min(places.length - 1, Math.max(0, at + (by ?? 0)))] ?? found('#talk')).focus();
  };
  for (const button of buttons)
    button.addEventListener('click', () => {
      follow();
      const part = button.dataset.part ?? '';
      const longer = withPart(parts, part);
      if (longer === parts) say(strings.tooMany(MOST_PARTS));
      else change(longer, strings.added(nameOf(part)));
    });
  onFiles({ parts: () => parts, say, take: (next) => change(next, strings.opened(next.length)) });
  // also when a page comes back as it was left: it is told so then
  addEventListener('storage', follow);
  show(parts);
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
