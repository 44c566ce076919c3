/** Words of the text to copy. */
export const strings = {
  form: 'For where it goes',
  area: 'The result as text',
  copy: 'Copy the text',
  done: 'Copied.',
  refused: 'The browser did not allow copying: the text is selected, copy it by hand.',
} as const;
