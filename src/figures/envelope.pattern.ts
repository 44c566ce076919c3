import type { Envelope } from '#compute';

/** A point of the power averaged over single cycles: when, as a share of the time that is drawn, and how much of the peak. */
export interface PatternPoint {
  readonly at: number;
  readonly share: number;
}

const PARIS = ['.--.', '.-', '.-.', '..', '...'] as const;
const LETTERS = ['P', 'A', 'R', 'I', 'S'] as const;
/** Units of Morse timing: a dash, between marks, between letters, after a word (ITU-R M.1677). */
const UNITS = { dash: 3, gap: 1, letterGap: 3, wordGap: 7 } as const;
const DITS = 10;
/** Beats of two tones that are drawn, and points a beat. */
const BEATS = 3;
const POINTS = 24;

/** One mark: from where to where, in units. */
interface Span {
  readonly from: number;
  readonly to: number;
}

/** The marks of the word PARIS in units, the letters with their middles, and the length of the word with the space after it. */
export function parisMarks(): {
  readonly marks: readonly Span[];
  readonly letters: readonly { readonly name: string; readonly middle: number }[];
  readonly length: number;
} {
  const marks: Span[] = [];
  const letters: { name: string; middle: number }[] = [];
  let at = 0;
  PARIS.forEach((code, index) => {
    const start = at;
    for (const sign of code) {
      const length = sign === '-' ? UNITS.dash : 1;
      marks.push({ from: at, to: at + length });
      at += length + UNITS.gap;
    }
    at -= UNITS.gap;
    letters.push({ name: LETTERS[index] ?? '', middle: (start + at) / 2 });
    at += UNITS.letterGap;
  });
  return { marks, letters, length: at - UNITS.letterGap + UNITS.wordGap };
}

const keyed = (marks: readonly Span[], length: number): PatternPoint[] => [
  { at: 0, share: 0 },
  ...marks.flatMap(({ from, to }) => [
    { at: from / length, share: 0 },
    { at: from / length, share: 1 },
    { at: to / length, share: 1 },
    { at: to / length, share: 0 },
  ]),
  { at: 1, share: 0 },
];

/** The power averaged over single cycles, over the time that is drawn. Two equal tones beat: the envelope’s power goes as a cosine squared. */
export function patternOf(envelope: Envelope): readonly PatternPoint[] {
  switch (envelope) {
    case 'steadyCarrier':
      return [
        { at: 0, share: 1 },
        { at: 1, share: 1 },
      ];
    case 'stringOfDits':
      return keyed(
        Array.from({ length: DITS }, (_, index) => ({ from: 2 * index, to: 2 * index + 1 })),
        2 * DITS,
      );
    case 'parisWord': {
      const { marks, length } = parisMarks();
      return keyed(marks, length);
    }
    case 'twoEqualTones':
      return Array.from({ length: BEATS * POINTS + 1 }, (_, index) => ({
        at: index / (BEATS * POINTS),
        share: Math.cos((Math.PI * index) / POINTS) ** 2,
      }));
  }
}
