import { LONGEST_FOR_FORUM } from './forum.ts';

/** Words of the text to take along. */
export const copyStrings = {
  heading: 'Take it along',
  address:
    'The text is a record: every point with its raw readings, the chain, what was agreed and changed, cautions, and the address that opens the same sheet.',
  nameless: 'Leave out names and serial numbers',
  namelessHelp:
    'Title, names of links, points and causes, who measured, instruments, certificates, remarks and reasons then stay here. Read through what else you typed: plane, conditions, supply, temperature, date.',
  decimalHelp:
    'For the texts, tables and pictures that you take along, and for what this site shows and puts into fields. With a comma, semicolons part the cells of a table. What you typed, and what the log quotes, stays as it is; addresses and the sheet’s file keep their point.',
  form: 'For where it goes',
  button: 'Copy the record as text',
  addressButton: 'Copy the address alone',
  done: 'Copied.',
  doneAddress: (letters: number): string => `Copied: ${letters} letters, which mail and forums take.`,
  longAddress: (letters: number): string =>
    `Copied, but it has ${letters} letters, and many forums and mail programs cut off what is longer than ${LONGEST_FOR_FORUM}: save the sheet as a file and give that along.`,
  noAddress: 'This sheet is too long for an address: save it as a file and give that along.',
  withoutAddress:
    'Copied, without the address, which is too long for a forum: save the sheet as a file and give that along.',
  refused: 'The browser did not allow copying. Here is the text, selected: copy it yourself.',
  area: 'The record as text',
} as const;
