import { deckStrings as strings } from './deck-strings.ts';

/** What a slide is called: a step by its title, a borrowed one by that of the page in its frame, one that is missing by what it says. */
export const nameOfSlide = (slide: Element | undefined): string =>
  slide?.getAttribute('aria-label') ??
  slide?.querySelector('iframe')?.title ??
  slide?.textContent?.trim() ??
  '';

/** Which step is shown now, for who only listens. */
export const stepTold = (slides: readonly Element[], at: number): string =>
  strings.step(at + 1, slides.length, nameOfSlide(slides[at]));

/** Speaks what has just been done in this window; the focus stays where it is, as a clicker wants it. */
export function speak(words: string): void {
  const place = document.querySelector('[data-deck="told"]');
  if (place) place.textContent = words;
}
