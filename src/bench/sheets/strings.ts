/** Words of the list of kept sheets. */
export const sheetStrings = {
  page: {
    title: 'Kept sheets',
    description:
      'The measurement sheets that this browser keeps: find one, open it on the bench, duplicate or delete it.',
    heading: 'Kept sheets',
    lead: 'What you change on the bench is kept here by itself, the latest change first.',
    note: 'Sheets are kept by this browser on this device and nowhere else: they are gone when its data for this site is cleared, and a private window forgets them when it closes. To have a sheet elsewhere too, save it on the bench as a file, or pass its address on.',
    noScript: 'Without JavaScript nothing is kept.',
    bench: 'To the bench',
  },
  search: 'Search',
  searchHelp: 'In titles, names, dates, remarks, points and links; every word must be found.',
  reading: 'Looking what is kept …',
  none: 'No sheet is kept yet. Change something on the bench, and it is.',
  noneFound: 'No kept sheet has all of these words.',
  count: (shown: number, all: number): string =>
    shown === all ? `${all} ${all === 1 ? 'sheet' : 'sheets'}` : `${shown} of ${all} sheets`,
  changed: (time: string): string => `changed ${time}`,
  future:
    'That time is still to come: the clock of this device is, or was, set wrong. The order does not hang on it.',
  about: (method: string, points: number): string =>
    `${method}, ${points} ${points === 1 ? 'point' : 'points'}`,
  duplicate: 'Duplicate',
  remove: 'Delete',
  duplicateOf: (name: string): string => `Copy of ${name}`,
  onlyButton: (action: string, name: string): string => `${action}: ${name}`,
  duplicated: (name: string): string => `“${name}” is kept.`,
  removed: (name: string): string =>
    `“${name}” is deleted. Until you leave this page it can be brought back.`,
  undo: 'Undo the deletion',
  restored: (name: string): string => `“${name}” is back.`,
  unreadable: {
    title: 'Kept, but not readable here',
    newer:
      'kept by a newer version of this site, which this page cannot read. It is left as it is; reload the page to get the newer version.',
    damaged: 'cannot be read any more. It is left as it is unless you delete it.',
  },
  problems: {
    refused:
      'This browser keeps nothing here: a private window or a setting may forbid it. The bench works all the same.',
    full: 'This browser has no room left. Delete sheets that you no longer need.',
    newer:
      'What is kept here was written by a newer version of this site. It is left as it is; reload the page to get the newer version.',
    changed: 'That sheet was changed in another tab or window meanwhile. Nothing was done.',
    missing: 'That sheet was deleted in another tab or window meanwhile.',
    damaged: 'That sheet cannot be read any more. It is left as it is.',
  },
} as const;
