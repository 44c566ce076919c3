/** Where the figure stands: its text must stay legible at each width. */
export type CurveFrame = 'wide' | 'narrow';

/** Measures in units of the view box, by frame; heights are common. */
export const CURVE = {
  numbersY: 14,
  wordsY: 32,
  top: 42,
  ground: 122,
  stripY: 129,
  stripHeight: 10,
  limitBottom: 145,
  axisY: 149,
  tickY: 171,
  wide: { width: 640, axis: [8, 596], height: 180, tickCount: 8, tickRoom: 58, unitX: 640, unitY: 171 },
  narrow: { width: 300, axis: [16, 284], height: 192, tickCount: 4, tickRoom: 46, unitX: 294, unitY: 188 },
} as const;
