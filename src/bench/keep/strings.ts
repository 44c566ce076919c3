import type { StoreProblem } from '../../store/kept.ts';

/** Words of what is kept of the sheet on the bench. */
export const keepStrings = {
  unchanged: 'Nothing is changed yet, and nothing kept: what you change is kept in this browser by itself.',
  now: 'Keep it as it is',
  waiting: 'Not kept yet …',
  kept: (time: string): string => `Kept in this browser, ${time}.`,
  notKept: 'Not kept: see below.',
  otherwise: 'Kept otherwise than it stands here: see below.',
  future: 'That time is still to come: the clock of this device is, or was, set wrong.',
  failed: {
    refused:
      'This browser keeps nothing here: a private window or a setting may forbid it. Everything else works; save the sheet as a file or pass its address on before you leave this page.',
    full: 'This browser has no room left: your last changes are not kept. Everything else works. Delete kept sheets that you no longer need, or save the sheet as a file, before you leave this page.',
  },
  again: 'Try again',
  elsewhere: {
    changed: 'This sheet was changed in another tab or window after you had opened it here.',
    missing: 'This sheet was deleted in another tab or window.',
    newer:
      'This sheet was changed by a newer version of this site, which this page cannot read. It is left as it is there; reload the page to get the newer version.',
  },
  mine: 'What you changed here since then is not kept. Nothing is overwritten until you choose.',
  notMine: 'You have changed nothing here since then.',
  choices: {
    take: 'Show the one from the other tab here',
    beside: 'Keep this one as a sheet of its own',
    instead: 'Keep this one in place of the other',
  },
  takeNote: 'After the first choice, undo brings back what stands here now.',
  opening: {
    missing: 'The sheet that this address asks for is not, or no longer, kept in this browser.',
    newer:
      'The sheet that this address asks for was kept by a newer version of this site, which this page cannot read. It is left as it is; reload the page to get the newer version.',
    damaged: 'The sheet that this address asks for cannot be read any more. It is left as it is.',
    refused: 'This browser does not let the page see what is kept.',
    full: 'This browser does not let the page see what is kept.',
    changed: 'This browser does not let the page see what is kept.',
  } satisfies Readonly<Record<StoreProblem, string>>,
} as const;
