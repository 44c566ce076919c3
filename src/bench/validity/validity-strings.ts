/** Words of the validity part while it is folded. */
export const validityStrings = {
  heading: 'Is the measurement itself sound?',
  intro:
    'A result is as good as the conditions it was taken under. These checks cost a few readings each; what they say goes into the record and into the copied text.',
  fold: 'Checks for this method',
} as const;
