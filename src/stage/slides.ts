/** Where a step goes on with a slide more, in its markup. */
export const NEXT_SLIDE = '<hr class="next-slide">';

const NOTES_OPEN = '<article class="slide-notes">';
const PIECE = /<article class="slide-notes">|<\/article>|<hr class="next-slide">/g;

const isBlank = (html: string): boolean => html.replace(/<!--[\s\S]*?-->/g, '').trim() === '';

/** The markup of a step, a slide each: cut where the wall goes on. A mark within the notes is none, and goes. */
export function slidesOf(html: string): readonly string[] {
  let depth = 0;
  let from = 0;
  const slides: string[] = [];
  for (const { 0: piece, index } of html.matchAll(PIECE)) {
    if (piece !== NEXT_SLIDE) depth += piece === NOTES_OPEN ? 1 : -1;
    else if (depth === 0) {
      slides.push(html.slice(from, index));
      from = index;
    }
  }
  slides.push(html.slice(from));
  const plain = slides.map((slide) => slide.replaceAll(NEXT_SLIDE, ''));
  // nothing before the first mark is no slide
  return plain.length > 1 && isBlank(plain[0] ?? '') ? plain.slice(1) : plain;
}

/** The id of the slides that a step is shown on: its own, and with a number from the second one on. */
export const slideId = (step: string, at: number): string => (at === 0 ? step : `${step}-${at + 1}`);
