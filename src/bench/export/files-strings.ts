/** Words of the files to save and to open. */
export const filesStrings = {
  save: 'Save',
  saveHelp: 'Names and serial numbers are left out here too, if you said so above.',
  stale:
    'Tables and picture show the last entries that could all be used; the sheet’s file has everything as you typed it.',
  sheet: 'The sheet, as JSON',
  readings: 'The readings, as CSV',
  budget: 'The budget, as CSV',
  svg: 'The figure, as SVG',
  png: 'The figure, as PNG',
  noPicture: 'This point is out of the method’s range: there is no figure of it.',
  saved: (name: string): string => `Given to the browser to save: ${name}.`,
  failed: 'The browser could not make this file.',
  open: 'Open a saved sheet',
  openHelp:
    'A file that was saved here, ending in “.json”, of up to 5 MB. It takes the place of the sheet; undo brings that back.',
  opened: (title: string): string => `Opened: ${title}. Undo brings back what was there.`,
  untitled: 'a sheet without a title',
  several: (count: number): string => `There are ${count} sheets in the file. Which one?`,
  notes: 'What could not be taken from the file:',
  holdsInstruments:
    'This file holds instruments, not a sheet: open it on the page of your instruments, under “Files”.',
  holdsPractice: 'This file holds what was practised, not a sheet: add it on the page of practice.',
  names: { readings: 'readings', budget: 'budget' },
} as const;
