import { type Deck, listenToKeys, startDeck } from './deck.ts';
import { strings } from './strings.ts';
import { type Part, partAddress, readTalk } from './talk.ts';

/** A borrowed step as a slide: its page in a frame, so that its figure works and keeps its state. */
function slideOf(part: Part, at: number): HTMLElement {
  const slide = document.createElement('section');
  slide.id = `s${at + 1}`;
  slide.className = 'slide slide-part';
  slide.dataset.next = strings.on;
  const frame = document.createElement('iframe');
  frame.dataset.part = part;
  frame.dataset.turn = `${at + 1}`;
  frame.title = strings.borrowed; // until it is there
  slide.append(frame);
  return slide;
}

/** Loads the step in sight and the one after it; each is loaded once. */
function load(root: HTMLElement, isNotes: boolean): void {
  const now = root.querySelector('.slide.now');
  for (const slide of [now, now?.nextElementSibling])
    for (const frame of slide?.querySelectorAll('iframe') ?? [])
      if (!frame.hasAttribute('src')) {
        const { part = '', turn = '' } = frame.dataset;
        frame.src = partAddress(part, { isNotes, turn: Number(turn) });
      }
}

/** Gives the deck the keys of a frame, and the slide the name of its step; says so where there is none. */
function adopt(frame: HTMLIFrameElement, deck: Deck): void {
  if (!frame.hasAttribute('src')) return;
  const step = frame.contentDocument?.querySelector('.slide.now');
  const id = frame.dataset.part?.split('.').at(-1);
  if (!step || step.id !== id) {
    const words = document.createElement('p');
    words.textContent = strings.missing(frame.dataset.part ?? '');
    frame.replaceWith(words);
    return;
  }
  frame.title = step.getAttribute('aria-label') ?? '';
  if (frame.contentWindow) listenToKeys(frame.contentWindow, deck);
}

/** Shows the talk that the address carries: a slide for each part, and the last step of the page itself behind them. */
export function startTalk(root: HTMLElement): void {
  const isNotes = new URLSearchParams(location.search).has('notes');
  const parts = readTalk(location.search);
  if (parts.length > 0) root.querySelector('.slide')?.replaceWith(...parts.map(slideOf));
  root.addEventListener('deck:slide', () => load(root, isNotes));
  const deck = startDeck(root);
  for (const frame of root.querySelectorAll('iframe'))
    frame.addEventListener('load', () => adopt(frame, deck));
  // behind the first frame, which the room waits for
  const first = root.querySelector('iframe');
  first?.addEventListener(
    'load',
    async () => {
      const last = root.querySelector('#address');
      try {
        const { layOnPaper } = await import('./talk-paper.ts');
        await layOnPaper(parts, last);
      } catch {
        const told = Object.assign(document.createElement('p'), { textContent: strings.noPaper });
        told.className = 'talk-paper';
        last?.before(told);
      }
    },
    { once: true },
  );
  const leave = document.querySelector<HTMLAnchorElement>('.stage-bar a');
  if (leave) leave.href += location.search;
}
