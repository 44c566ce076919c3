/** How much of the wall the words of a step take: few are written larger. */
export type Fill = 'figure' | 'guess' | 'guess-few' | 'few' | 'some' | 'many';

/** Most letters that are few, and that are some. */
const FEW = 100;
const SOME = 190;
/** Most letters of a question that is written larger. */
const SHORT_GUESS = 210;

const OPENS = '<article class="slide-notes">';
const innermost = /<article class="slide-notes">((?:(?!<article)[\s\S])*?)<\/article>/;

/** A step's markup in its two parts: what is for the wall, and what is for the speaker and for paper. */
export function partsOf(html: string): { readonly wall: string; readonly notes: string } {
  const notes: string[] = [];
  let wall = html;
  for (let found = innermost.exec(wall); found; found = innermost.exec(wall)) {
    const isNested = wall.slice(0, found.index).includes(OPENS);
    // notes within notes stay where they are in them
    if (!isNested) notes.push(found[1] ?? '');
    wall = wall.replace(innermost, () => (isNested ? (found[1] ?? '') : ''));
  }
  return { wall, notes: notes.join('') };
}

const lettersOf = (html: string): number =>
  html
    .replace(/<(details|script|style)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<[^>]*>/g, '')
    .replace(/\s+/g, ' ')
    .trim().length;

/** How full the wall is, from what is on it; an answer that is not asked for yet does not count. */
export function fillOf(wall: string): Fill {
  const isGuess = wall.includes('class="stage-guess');
  if (wall.includes('<astro-island') && !isGuess) return 'figure';
  const letters = lettersOf(wall);
  if (isGuess) return letters <= SHORT_GUESS ? 'guess-few' : 'guess';
  if (letters <= FEW) return 'few';
  return letters <= SOME ? 'some' : 'many';
}
