import { replaceAddress } from '../address/replace-address.ts';
import { keptSigns } from '../store/signs.ts';
import { deckStrings as strings } from './deck-strings.ts';
import { startHelp } from './help.ts';
import { stepWithin, usesKey, wishOf } from './keys.ts';
import { isTold, type Line, lineName, openLine, silent, type Told } from './line.ts';
import { startClock } from './notes-clock.ts';
import { leaveControl, obey } from './orders.ts';
import { openScrolling } from './scrolling.ts';
import { speak, stepTold } from './told.ts';

/** The slides of a stage, which of them is shown, and what can be asked of them. */
export interface Deck {
  readonly slides: readonly HTMLElement[];
  readonly at: number;
  /** Shows a step here and in the other window. */
  readonly go: (step: number) => void;
  readonly blank: (on: boolean) => void;
}

/** What a window shows: the wall, the notes to it, or one step within a talk, which then has the keys. */
type Role = 'wall' | 'notes' | 'part';

const page = document.documentElement;
const isBlank = (): boolean => page.classList.contains('blank');
const named = (slides: readonly HTMLElement[]): number =>
  stepWithin(
    slides.findIndex(({ id }) => `#${id}` === location.hash),
    slides.length,
  );

/** Hides all but one step; in the notes the next one is shown too, not to be touched. */
function showOnly(slides: readonly HTMLElement[], at: number, isNotes: boolean): void {
  slides.forEach((slide, index) => {
    const isNext = isNotes && index === at + 1;
    slide.hidden = index !== at && !isNext;
    slide.inert = isNext;
    slide.classList.toggle('now', index === at);
  });
  const counter = document.querySelector('[data-deck="count"]');
  if (counter) counter.textContent = `${at + 1} / ${slides.length}`;
}

function deckOf(root: HTMLElement, from: Role): Deck {
  const slides = [...root.querySelectorAll<HTMLElement>(':scope > .slide')];
  let at = named(slides);
  const show = (step: number): void => {
    at = stepWithin(step, slides.length);
    showOnly(slides, at, from === 'notes');
    const slide = slides[at];
    if (slide) replaceAddress(`${location.search}#${slide.id}`);
    if (from === 'notes') scrollTo(0, 0);
    root.dispatchEvent(new CustomEvent('deck:slide'));
  };
  const hear = (told: Told): void => {
    if ('asks' in told) {
      if (from === 'wall') tell();
      return;
    }
    page.classList.toggle('blank', told.blank);
    if (told.step !== at) show(told.step);
  };
  const line: Line<Told> = from === 'part' ? silent : openLine(lineName(location), isTold, hear);
  const tell = (): void => line.tell({ step: at, blank: isBlank() });
  const go = (step: number): void => {
    show(step);
    tell();
    speak(stepTold(slides, at));
  };
  const blank = (on: boolean): void => {
    if (on !== isBlank()) speak(on ? strings.blanked : strings.shownAgain);
    page.classList.toggle('blank', on);
    tell();
  };
  addEventListener('hashchange', () => go(named(slides)));
  show(at);
  if (from === 'notes') line.tell({ asks: true });
  return {
    slides,
    get at() {
      return at;
    },
    go,
    blank,
  };
}

function roleOf(query: URLSearchParams): Role {
  if (query.has('part')) return 'part';
  return query.has('notes') ? 'notes' : 'wall';
}

/** Makes the slides of a stage move by key, by button and by address; without it they are a page that scrolls. */
export function startDeck(root: HTMLElement): Deck {
  const query = new URLSearchParams(location.search);
  const role = roleOf(query);
  page.classList.add('deck');
  page.classList.toggle('part', role === 'part');
  page.classList.toggle('notes-view', query.has('notes'));
  const deck = deckOf(root, role);
  if (role !== 'notes') openScrolling(deck.slides);
  if (role === 'part') return deck;
  listenToKeys(window, deck);
  for (const button of document.querySelectorAll<HTMLElement>('[data-deck-does]')) {
    button.addEventListener('click', () => obey(deck, button.dataset.deckDoes ?? ''));
    // where no number can be changed there is nothing to lead to
    if (button.dataset.deckDoes === 'number') button.hidden = !root.querySelector('.stage-what-if, iframe');
  }
  startHelp();
  if (role === 'notes') startClock();
  return deck;
}

/** Lets the keys of a window move the deck: its own, or one that a step of a talk is shown in. */
export function listenToKeys(target: Window, deck: Deck): void {
  // Capture: a focused slider would otherwise swallow the clicker's keys.
  target.addEventListener('keydown', (event) => onKey(event, deck), { capture: true });
  target.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && !event.defaultPrevented && !leaveControl(event.target)) deck.blank(false);
  });
}

function onKey(event: KeyboardEvent, deck: Deck): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const wish = wishOf({
    key: event.key,
    at: deck.at,
    count: deck.slides.length,
    inControl: usesKey(event.target, event.key),
    signs: keptSigns(),
  });
  if (wish === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  if (event.repeat) return;
  if (typeof wish === 'string') obey(deck, wish);
  // on a blank wall nobody would see the step that is passed; the notes stay in sight and may go on
  else if (isBlank() && !page.classList.contains('notes-view')) deck.blank(false);
  else deck.go(wish.to);
}
