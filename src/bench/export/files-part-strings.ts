/** Words of the part on files while it is folded. */
export const filesPartStrings = {
  heading: 'Files',
  intro:
    'The whole sheet as a file that opens here again, the readings and the budget for a spreadsheet, the figure as a picture with its numbers in it. Everything is made in this browser; nothing is sent anywhere.',
  fold: 'Save a file, or open one',
} as const;
