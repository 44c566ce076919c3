/** Words of the part on what would help while it is folded. */
export const helpPartStrings = {
  heading: 'What would help?',
  intro:
    'Each link made perfect, half as wrong, or replaced by a better one that you know of; how far the cheapest single change has to go; whether more readings pay.',
  fold: 'Work it out for this point',
} as const;
