import { shownText } from '../../text/shown-text.ts';
import type { Decimal } from '../../text/style.ts';

/** Pages that see to their decimal sign themselves, and those that repeat what is printed elsewhere or cut texts up. */
const AS_THEY_ARE = /\/(practice|search|reference\/checks)\//;
/** Copied, spoken, typed, the numbers of clauses, and what shows a point to choose it. */
const AS_WRITTEN =
  'textarea, pre, code, script, style, title, desc, bdi, .visually-hidden, .katex-mathml, .sources, .copy-forms';
/** Behind the name of a document, or of one of its articles or versions, stand clauses up to the end of their bracket or sentence, and in an address no decimals. */
const CLAUSES =
  /(?:JCGM|VIM|GUM|CEPT|WCAG|Brochure|Article|edition|[Vv]ersion|:\/\/)(?:[^().]|\.\S|\([^()]*\))*/;
/** What somebody typed, where a sentence says what is wrong with it, and a comma would be the very thing that is wrong. */
const TYPED = /\u201c[^\u201d]*\u201d(?: can mean.*|(?= (?:is|has|does|lies|means|counts)\b|:))/;
/** Names, which are kept apart. */
const NAMES = /\u2068[^\u2069]*\u2069/;
const NOT_OURS = new RegExp(`(${[CLAUSES, TYPED, NAMES].map(({ source }) => source).join('|')})`);

/** What parts the bare numbers of a list. */
const LISTED = /(\d,\d+), (?=[\u2212+±]?\d+,\d)/g;

/** A text of a page with a decimal comma, but for clauses and what a reader typed; in a list of numbers semicolons part them. */
export const inPage = (text: string): string =>
  text
    .split(NOT_OURS)
    .map((part, at) => (at % 2 ? part : shownText(part, 'comma').replace(LISTED, '$1; ')))
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

/**
 * Shows the numbers of this page with the reader's decimal sign, and goes on doing so: what an island draws anew, and when another sign is
 * chosen: it is done before that is painted. Only whoever has chosen a comma fetches it.
 * @param kept what is chosen.
 */
export function followSign(kept: () => Decimal): void {
  const main = document.querySelector('main');
  // asked for anew with each choice
  if (main === null || 'sign' in main.dataset || AS_THEY_ARE.test(location.pathname)) return;
  main.dataset.sign = '';
  const follow = (): void => turnAll(main, kept() === 'comma');
  follow();
  addEventListener('storage', follow);
  const observer = new MutationObserver((changes) => {
    if (kept() !== 'comma') return;
    for (const { target, addedNodes } of changes)
      for (const root of addedNodes.length > 0 ? addedNodes : [target]) turnAll(root, true);
    // what was done here is no news
    observer.takeRecords();
  });
  observer.observe(main, { subtree: true, childList: true, characterData: true });
}
