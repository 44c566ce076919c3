/** Words of the choice of a decimal sign. */
export const decimalStrings = {
  legend: 'Decimal sign',
  signs: { point: 'Point: 1.5', comma: 'Comma: 1,5' },
  /** What it holds for where nothing but fields hangs on it. */
  fields:
    'For the numbers that this site puts into fields. What you typed stays as typed, and fields take either sign; answers on the page keep their point.',
  refused: 'This browser keeps nothing: the choice holds until you leave the page.',
} as const;
