/** Words of the choice of a decimal sign. */
export const decimalStrings = {
  legend: 'Decimal sign',
  signs: { point: 'Point: 1.5', comma: 'Comma: 1,5' },
} as const;
