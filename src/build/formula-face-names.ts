/** The faces that formulas here are set in, by the names of KaTeX's files; a test of the formulas holds the list to them. */
export const FORMULA_FACES = [
  'Main-Regular',
  'Math-Italic',
  'Size1-Regular',
  'Size2-Regular',
  'Size3-Regular',
  'Size4-Regular',
] as const;

/** How the names of the cut faces begin: a licence reserves those of unmodified copies. */
export const OWN = 'Signs_';

/** The file of a cut face, in the folder of the project's faces. */
export const fileOfFace = (face: string): string => `${OWN}${face}.woff2`;
