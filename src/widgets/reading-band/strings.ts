import { namesAnd } from '../../text/and.ts';

/** Words of the reading-band widget. */
export const strings = {
  name: 'The reading band along the calibration chain',
  description: (summary: string): string =>
    `From the SI definition at the top to the transmitter at the foot, each rung adds to the band. ${summary}`,
  expanded: (factor: number): string =>
    `expanded uncertainty, coverage factor k = ${factor}: an interval that covers about 95\u00a0% of the values the level may reasonably have`,
  exact: 'no band: no rung adds anything',
  same: 'the same in watts',
  lopsided: 'farther up than down: what is even in decibels is not even in watts',
  widensMost: (labels: readonly string[]): string =>
    `${namesAnd(labels)} ${labels.length > 1 ? 'widen' : 'widens'} it most`,
  halved: ({ share, left }: { share: string; left: string }): string =>
    `${share} of the variance; half as wrong, it would leave ${left}`,
  halvedOne: ({ share, left }: { share: string; left: string }): string =>
    `${share} of the variance each; one of them half as wrong, it would leave ${left}`,
  nothingWidens: 'Nothing widens it',
  nothingWidensWords: 'a reading without any doubt: nobody has one',
  controls: 'What each rung adds',
  rungColumn: 'Rung',
  addsColumn: 'It adds',
  bandColumn: 'Band from the definition to here',
  shareColumn: 'Share of variance',
  slider: (label: string): string => `${label}: drag what it adds`,
  field: (label: string): string => `${label}: what it adds`,
  limits: 'Show the worst case as end marks',
  curve: 'Show the whole distribution as a curve',
  limitsNote: (open: boolean): string =>
    open
      ? 'End marks: the sum of all limits. They are open, because a part of the chain has no limit: beyond them nothing is guaranteed.'
      : 'End marks: the sum of all limits, a guarantee as good as the limits.',
  curveNote: 'Curves: the whole distribution up to each rung, all drawn to the same height.',
  stripNote: (factor: number): string =>
    `Strip: expanded uncertainty, k = ${factor}. A dashed outline is the band before the last change, an outlined strip beside a thin one its magnified copy.`,
  reset: 'Back to the prepared values',
  build: 'Build a chain of your own',
  lost: 'Not fetched. Press again.',
  noScript: 'Dragging and typing need JavaScript; the figure and its table are complete without it.',
} as const;
