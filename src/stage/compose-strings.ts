/** Words of the page on which a talk is put together. */
export const composeStrings = {
  part: 'Step',
  up: (step: string): string => `Earlier: ${step}`,
  down: (step: string): string => `Later: ${step}`,
  remove: (step: string): string => `Take out: ${step}`,
  add: (step: string): string => `Add: ${step}`,
  added: (step: string): string => `Added at the end: ${step}.`,
  moved: (place: number): string => `Now step ${place}.`,
  removed: (step: string): string => `Taken out: ${step}.`,
  nothing: 'Nothing picked yet.',
  missing: (part: string): string => `${part} (not on this site)`,
  noPart: (part: string): string => `“${part}” is no step of a talk. Nothing was changed.`,
  tooMany: (most: number): string => `A talk has at most ${most} steps. Nothing was changed.`,
  noFile: 'That did not work: are you connected? Nothing was changed.',
  elsewhere: (count: number): string =>
    `Another window has changed your talk, and this page follows. Steps now: ${count}.`,
  instead: 'This is your talk now, in place of the one that was kept.',
  before: 'As it was before',
  opened: (count: number): string => `Steps in the file: ${count}. They are your talk now.`,
  notKept: 'This browser keeps nothing for this site: save the talk as a file, or keep its address.',
} as const;
