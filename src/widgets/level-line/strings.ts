import type { TileKind } from './spec.ts';

/** Words of the line of tiles. */
export const strings = {
  name: 'A line of levels and gains, and what it comes to',
  description: (summary: string): string =>
    `Tiles from left to right: levels are boxes, gains point onwards. Beneath each stands what the line comes to up to there. ${summary}`,
  words: { level: 'level', less: 'less', gain: 'gain', loss: 'loss' },
  nothing: 'nothing',
  noTiles: 'No tile yet',
  noTilesWords: 'put a level into the line, or a gain',
  levelWords: (power: string): string => `${power}: one level and its gains make a level`,
  ratioWords: (factor: string): string => `${factor} in power: a ratio, and it does not say of what`,
  differenceWords: (factor: string): string => `${factor} in power: one level less another leaves a ratio`,
  meansNothing: 'This sum means nothing',
  multiplied: ({ power, milliwatts }: { power: string; milliwatts: string }): string =>
    `adding levels multiplies their powers, which gives ${milliwatts}. Read as a level, it would claim ${power}`,
  divided:
    'a level was taken away from what has none: that is “one divided by milliwatts”, and no power is that',
  tooMuch: 'adding levels multiplies their powers, which gives no power',
  squared: (count: number): string =>
    count === 2 ? 'milliwatts times milliwatts' : `milliwatts ${count} times over`,
  instead: 'What you may have meant',
  insteadWords: ({ unrelated, inPhase }: { unrelated: string; inPhase: string }): string =>
    `the signals together in one load: ${unrelated} if they are unrelated, up to ${inPhase} if they are of one frequency and in phase`,
  controls: 'The line, tile by tile',
  tileColumn: 'Tile',
  setColumn: 'Kind and number',
  runningColumn: 'The line up to here',
  tile: (index: number): string => `Tile ${index + 1}`,
  kind: (index: number): string => `Tile ${index + 1}: kind`,
  value: (index: number): string => `Tile ${index + 1}: number`,
  slide: (index: number): string => `Tile ${index + 1}: drag its number`,
  kinds: {
    level: 'level, in dBm',
    less: 'less a level, in dBm',
    gain: 'gain or loss, in dB',
  } satisfies Readonly<Record<TileKind, string>>,
  firstPad: 'First pad',
  earlier: 'Earlier',
  later: 'Later',
  remove: 'Remove',
  ofTile: (what: string, index: number): string => `${what}: tile ${index + 1}`,
  addLevel: 'Add a level',
  addGain: 'Add a gain or loss',
  reset: 'Back to the prepared line',
  full: 'The line is full.',
  noScript:
    'Arranging and typing need JavaScript; the figure, its numbers and its table are complete without it.',
} as const;
