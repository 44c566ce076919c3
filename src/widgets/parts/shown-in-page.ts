import { shownText } from '../../text/shown-text.ts';
import type { Decimal } from '../../text/style.ts';

/** Pages that show what somebody typed among their own words, and see to their decimal sign themselves. */
const BY_THEMSELVES = /\/(bench|practice)\//;
/** Copied, spoken, typed, the numbers of clauses, and what shows a point to choose it. */
const AS_WRITTEN =
  'textarea, pre, code, script, style, title, desc, .visually-hidden, .katex-mathml, .sources, .copy-forms, [dir=auto]';
/** Behind the name of a document stand clauses up to the end of its bracket or sentence, and in an address no decimals. */
const CLAUSES = /((?:JCGM|VIM|GUM|CEPT|Brochure|edition|:\/\/)(?:[^().]|\.\S|\([^()]*\))*)/;

/** A text of a page with a decimal comma, but for clauses. */
export const inPage = (text: string): string =>
  text
    .split(CLAUSES)
    .map((part, at) => (at % 2 ? part : shownText(part, 'comma')))
    .join('');

/** What a text was before it had a comma. */
const before = new WeakMap<Text, string>();

function turn(node: Text, isComma: boolean): void {
  const written = before.get(node);
  if (!isComma) {
    if (written !== undefined && node.data === inPage(written)) node.data = written;
    return;
  }
  const next = inPage(node.data);
  if (next === node.data || node.parentElement?.closest(AS_WRITTEN)) return;
  before.set(node, node.data);
  node.data = next;
}

function turnAll(root: Node, isComma: boolean): void {
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  // a text by itself is the walker's root, and comes first
  for (let node: Node | null = walker.currentNode; node; node = walker.nextNode())
    if (node instanceof Text) turn(node, isComma);
}

/** What is followed already: each field asks. */
let followed: Element | undefined;

/**
 * Shows the numbers of this page with the reader's decimal sign, and goes on doing so: what an island draws anew, and when another sign is
 * chosen. Only whoever has chosen a comma fetches it.
 * @param kept what is chosen; handed over, since what several files of script share is cut into more of them.
 */
export function followSign(kept: () => Decimal): void {
  const main = document.querySelector('main');
  if (main === null || main === followed || BY_THEMSELVES.test(location.pathname)) return;
  followed = main;
  const follow = (): void => turnAll(main, kept() === 'comma');
  follow();
  addEventListener('storage', follow);
  new MutationObserver((changes) => {
    if (kept() !== 'comma') return;
    for (const { target, addedNodes } of changes)
      for (const root of addedNodes.length > 0 ? addedNodes : [target]) turnAll(root, true);
  }).observe(main, { subtree: true, childList: true, characterData: true });
}
