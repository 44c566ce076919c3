import type { InstrumentKind } from '../../instruments/instrument.ts';

const KINDS: Readonly<Record<InstrumentKind, string>> = {
  meter: 'Instrument',
  pad: 'Pad',
  cable: 'Cable or connector',
  amplifier: 'Amplifier',
  load: 'Load',
  other: 'Other',
};

const instruments = (count: number): string => (count === 1 ? 'one instrument' : `${count} instruments`);

/** Words of saving instruments as a file, and of opening one. */
export const shelfFileStrings = {
  id: 'By which sheets know it',
  which: 'What to save',
  all: 'all of them',
  leaveNames: 'Leave out names, numbers and notes, and who calibrated it',
  save: 'Save as a file',
  fileName: 'instruments',
  nothing: 'There is nothing on your shelf to save yet.',
  saved: (name: string): string => `Given to the browser to save: ${name}.`,
  open: 'Open a file',
  openHelp:
    'A file of instruments that was saved here, ending in “.json”, of up to 5 MB. What it holds is added; nothing on your shelf is overwritten.',
  unnamed: ({ kind, number }: { kind: InstrumentKind; number: number }): string => `${KINDS[kind]} ${number}`,
  added: (count: number): string =>
    count === 0 ? 'Nothing was added.' : `Added to your shelf: ${instruments(count)}.`,
  beside: (count: number): string =>
    count === 1
      ? 'One of them stood there already, stated otherwise: both are there now.'
      : `${count} of them stood there already, stated otherwise: both are there now.`,
  same: (count: number): string =>
    count === 1
      ? 'One stands there already just as in the file.'
      : `${count} stand there already just as in the file.`,
  noRoom: ({ count, room }: { count: number; room: number }): string =>
    `The file brings ${instruments(count)}, and there is room for ${room} more. Nothing was added: delete some first.`,
  holdsSheets: 'This file holds a sheet, not instruments: open it on the bench, under “Files”.',
} as const;
