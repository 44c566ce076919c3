/** What is looked at: each id is a function of the browser tests; the words say what it asks for. */
export const looks = {
  rules: {
    name: 'Rules',
    words:
      'The automatic checker axe finds no rule broken: neither those for WCAG 2.2, level AA, nor its advice for good practice.',
  },
  colours: {
    name: 'Letters against their ground',
    words:
      'Letters stand out from their ground by 4.5 to 1, large ones by 3 to 1, and links from the words around them.',
  },
  figures: {
    name: 'Figures against their ground',
    words: 'Letters in figures stand out by 4.5 to 1, and drawn lines by 3 to 1.',
  },
  edges: { name: 'Edges', words: 'The edges of fields and buttons stand out by 3 to 1.' },
  white: { name: 'White ground', words: 'The ground is white, whatever the screen is set to.' },
  fits: {
    name: 'Width',
    words:
      'Nothing reaches past the right edge unless it scrolls by itself; the page does not scroll sideways.',
  },
  letters: {
    name: 'Letters of figures',
    words: 'No letter in a figure is smaller than 12 pixels, or cut off.',
  },
  uncovered: {
    name: 'Focus in view',
    words: 'What has the focus is on the screen and not covered, on the way forwards and on the way back.',
  },
  still: { name: 'Rest', words: 'Nothing moves or fades when less motion is asked for.' },
  apart: { name: 'Texts of figures', words: 'No text in a figure lies over another text of that figure.' },
  uncut: { name: 'Whole text', words: 'No text outside figures is cut off or runs into another.' },
} as const;

export type LookId = keyof typeof looks;
