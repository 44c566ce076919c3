/** Keys that move, whatever has the focus: what a clicker sends. */
const CLICKER: Readonly<Record<string, number>> = { PageDown: 1, PageUp: -1 };
/** Keys that move where no control has the focus. */
const ARROWS: Readonly<Record<string, number>> = { ArrowRight: 1, ' ': 1, ArrowLeft: -1 };
const CONTROLS = 'input, select, textarea, [contenteditable]';
/** What is pressed by the space bar and leaves the other keys to the deck. */
const PRESSED = 'button, a, summary';

/** Which slide a key leads to, or undefined if it moves nothing. Pure, so that a test can press every key. */
export function slideAfter({
  key,
  at,
  count,
  inControl,
}: {
  key: string;
  at: number;
  count: number;
  inControl: boolean;
}): number | undefined {
  const step = CLICKER[key] ?? (inControl ? undefined : ARROWS[key]);
  if (step !== undefined) return Math.min(count - 1, Math.max(0, at + step));
  if (inControl) return undefined;
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : undefined;
}

/** Makes the slides of a stage move by key, by button and by address; without it they are a page that scrolls. */
export function startDeck(root: HTMLElement): void {
  const slides = [...root.querySelectorAll<HTMLElement>(':scope > .slide')];
  const counter = document.querySelector('[data-deck="count"]');
  let at = Math.max(
    0,
    slides.findIndex(({ id }) => `#${id}` === location.hash),
  );
  const show = (next: number): void => {
    at = next;
    slides.forEach((slide, index) => {
      slide.hidden = index !== at;
    });
    const slide = slides[at];
    if (slide) history.replaceState(null, '', `${location.search}#${slide.id}`);
    if (counter) counter.textContent = `${at + 1} / ${slides.length}`;
    root.dispatchEvent(new CustomEvent('deck:slide'));
  };
  // Capture: a focused slider would otherwise swallow the clicker's keys.
  addEventListener('keydown', (event) => onKey(event, { at, count: slides.length, show }), { capture: true });
  addEventListener('hashchange', () =>
    show(
      Math.max(
        0,
        slides.findIndex(({ id }) => `#${id}` === location.hash),
      ),
    ),
  );
  for (const button of document.querySelectorAll<HTMLElement>('[data-deck="back"], [data-deck="on"]'))
    button.addEventListener('click', () =>
      show(Math.min(slides.length - 1, Math.max(0, at + (button.dataset.deck === 'on' ? 1 : -1)))),
    );
  document.documentElement.classList.add('deck');
  show(at);
}

interface Deck {
  readonly at: number;
  readonly count: number;
  readonly show: (slide: number) => void;
}

function onKey(event: KeyboardEvent, { at, count, show }: Deck): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const within = (what: string): boolean =>
    event.target instanceof Element && event.target.closest(what) !== null;
  const inControl = within(CONTROLS) || (event.key === ' ' && within(PRESSED));
  if (!inControl && (event.key === 'b' || event.key === '.')) {
    document.documentElement.classList.toggle('blank');
    event.preventDefault();
    return;
  }
  const next = slideAfter({ key: event.key, at, count, inControl });
  if (next === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  if (!event.repeat) show(next);
}
