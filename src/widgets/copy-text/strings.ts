/** Words of the text to copy. */
export const strings = {
  form: 'For where it goes',
  area: 'The result as text',
  copy: 'Copy the text',
  done: 'Copied.',
  refused: 'The browser did not allow copying: the text is selected, copy it by hand.',
} as const;

/** What the decimal sign holds for; given by the page, so that it weighs nothing in the script. */
export const DECIMAL_HELP =
  'For the text, for pictures, and for what this site shows. Addresses, and what is only spoken, keep their point. Kept in this browser; where that is refused, until you leave the page.';
