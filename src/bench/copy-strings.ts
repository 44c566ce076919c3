/** Words of the text to take along. */
export const copyStrings = {
  heading: 'Take it along',
  address:
    'The text is a record: every point with its raw readings, the chain, what was agreed and changed, cautions, and the address that opens the same sheet.',
  button: 'Copy the record as text',
  done: 'Copied.',
  refused: 'The browser did not allow copying. Here is the text, selected: copy it yourself.',
  area: 'The record as text',
} as const;
