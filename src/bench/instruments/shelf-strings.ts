/** Words of the page of instruments. */
export const shelfStrings = {
  page: {
    title: 'Your instruments',
    heading: 'Your instruments',
    description:
      'Keep your own instruments, pads, cables and loads with what their data sheets or calibrations state, and use them in every sheet of the bench.',
    lead: 'Keep what you measure with: instruments, pads, cables and loads, each with what its data sheet or its calibration states, and the day of that. Every sheet of the bench can then take them from here.',
    note: 'They are kept in this browser and nowhere else; a sheet that has taken one carries a copy, so that it says the same to whoever opens it. Clearing the browser’s data clears them too; a file of them brings them back.',
    noScript: 'Keeping instruments needs script: they never leave this browser.',
    back: 'To the bench',
    club: 'An invented set',
    clubNote:
      'What the club of the demonstration has on its shelf. Every name and value is invented; one calibration is older than its interval on purpose.',
    cautions:
      'A rating here is what you typed: the manual of the part comes first. Key off, and prove that there is no RF, before you put another part into the line.',
  },
  files: {
    heading: 'Files',
    intro:
      'Instruments as a file that opens here again, in this browser or another. It is made in this browser; nothing is sent anywhere.',
    fold: 'Save as a file, or open one',
  },
  list: 'On your shelf',
  waiting: 'Your instruments are being looked up …',
  empty: 'Nothing is kept yet. Add what you measure with, or look at the invented set.',
  unfinished: 'Not finished: something it states is missing or cannot be used.',
  add: 'Add',
  addKind: 'Kind of what you add',
  addClub: 'Put the invented set on your shelf',
  full: (most: number): string =>
    `Your shelf has ${most} things on it and takes no more. Delete one before you add or duplicate another.`,
  clubFull: ({ count, room }: { count: number; room: number }): string =>
    `The invented set brings ${count} things, and there is room for ${room} more.`,
  edit: 'Edit',
  editOf: (name: string): string => `Edit: ${name}`,
  close: 'Close',
  closeOf: (name: string): string => `Close: ${name}`,
  duplicate: 'Duplicate',
  duplicateOf: (name: string): string => `Duplicate: ${name}`,
  copyOf: (label: string): string => `${label}, again`,
  remove: 'Delete',
  removeOf: (name: string): string => `Delete: ${name}`,
  removed: (name: string): string => `“${name}” is deleted.`,
  restore: 'Undo: bring it back',
  being: 'Being kept …',
  kept: 'All of it is kept in this browser.',
  notKept: 'Not kept: see what stands beside it.',
  nothingKept: (why: string): string =>
    `${why} You can go on, but what you enter here is gone when the page is closed.`,
  unreadable: (count: number): string =>
    count === 1
      ? 'One more thing lies here that this page cannot read; it is left alone.'
      : `${count} more things lie here that this page cannot read; they are left alone.`,
  problem: (why: string): string => `Your last change is not kept. ${why}`,
  takeKept: 'Show what is kept instead',
  keepMine: 'Keep mine as another one',
} as const;
