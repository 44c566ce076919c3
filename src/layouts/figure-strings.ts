/** Words around the figure that a reader takes along. */
export const figureStrings = {
  intro: 'The figure as it stands above, as a picture with result, assumptions and address drawn in:',
  copy: 'Copy the picture',
  png: 'Save it as PNG',
  svg: 'Save it as SVG',
  copied: 'The picture is copied.',
  refused: 'The browser did not allow copying a picture: save it instead.',
  saved: (name: string): string => `Given to the browser to save: ${name}.`,
  failed: 'The browser could not make this picture.',
} as const;
