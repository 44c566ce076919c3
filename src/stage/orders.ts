import type { Deck } from './deck.ts';
import { openHelp } from './help.ts';

/** Where a speaker was when the number was asked for, by deck. */
const cameFrom = new WeakMap<Deck, number>();

/** What a step is drawn in: itself, or the page that a talk shows in it. */
const within = (slide: Element | undefined): Element | undefined =>
  slide?.querySelector('iframe')?.contentDocument?.querySelector('.slide:not([hidden])') ?? slide;

const numberIn = (slide: Element | undefined): HTMLInputElement | null | undefined =>
  within(slide)?.querySelector<HTMLInputElement>('.stage-what-if input');

/** The step whose number is meant from here: this one, else the last before it, else the first after it. */
export function stepWithNumber(has: readonly boolean[], at: number): number | undefined {
  const before = has.slice(0, at + 1).lastIndexOf(true);
  const found = before === -1 ? has.indexOf(true) : before;
  return found === -1 ? undefined : found;
}

/** To the number that can be changed, ready to be typed over; asked again, back to where the speaker was. */
function toNumber(deck: Deck): void {
  const from = cameFrom.get(deck);
  cameFrom.delete(deck);
  if (from !== undefined && from !== deck.at) {
    deck.go(from);
    return;
  }
  const step = stepWithNumber(
    deck.slides.map((slide) => Boolean(numberIn(slide))),
    deck.at,
  );
  if (step === undefined) return;
  cameFrom.set(deck, deck.at);
  deck.go(step);
  const field = numberIn(deck.slides[step]);
  field?.focus();
  field?.select();
}

/** The step as it was prepared: its numbers, and its answer hidden again. */
function prepare(slide: Element | undefined): void {
  for (const button of within(slide)?.querySelectorAll<HTMLElement>('[data-deck="prepared"]') ?? [])
    button.click();
  for (const answer of within(slide)?.querySelectorAll('details[open]') ?? []) answer.removeAttribute('open');
}

/** Whole screen, or back; a browser that has none, or refuses, leaves the wall as it is. */
function toggleScreen(): void {
  const page = document.documentElement;
  const done = document.fullscreenElement ? document.exitFullscreen() : page.requestFullscreen?.();
  done?.catch(() => undefined);
}

function openNotes(): void {
  const address = new URL(location.href);
  address.searchParams.set('notes', '');
  open(address, 'stage-notes', 'popup,width=1000,height=720');
}

/** Does what a key or a button asks for. */
export function obey(deck: Deck, order: string): void {
  const orders: Readonly<Record<string, () => void>> = {
    back: () => deck.go(deck.at - 1),
    on: () => deck.go(deck.at + 1),
    blank: () => deck.blank(!document.documentElement.classList.contains('blank')),
    screen: toggleScreen,
    notes: openNotes,
    prepared: () => prepare(deck.slides[deck.at]),
    help: openHelp,
    number: () => toNumber(deck),
  };
  if (Object.hasOwn(orders, order)) orders[order]?.();
}

/** Takes the focus from a control, so that the keys are the deck's again; false if none had it. */
export function leaveControl(target: EventTarget | null): boolean {
  if (target === null || !('blur' in target) || !('closest' in target)) return false;
  const element = target as HTMLElement;
  if (element === element.ownerDocument.body) return false;
  // a dialog closes by itself
  if (element.closest('dialog') === null) element.blur();
  return true;
}
