/** What is looked at: each id is a function of the browser tests, and the words say what it asks for. */
export const looks = {
  rules:
    'no rule of the automatic checker axe is broken, those for WCAG 2.2 AA and its advice for good practice',
  colours:
    'letters stand out from their ground by 4.5 to 1 (large ones by 3 to 1), and links from the words around them',
  figures: 'letters of figures stand out by 4.5 to 1, lines that mean something by 3 to 1',
  edges: 'the edges of fields and buttons stand out by 3 to 1',
  white: 'the ground is white, whatever the screen is set to',
  fits: 'nothing reaches past the right edge unless it scrolls by itself, and the page does not scroll sideways',
  letters: 'no letter of a figure is smaller than 12 pixels or cut off',
  targets: 'what is pressed is at least 24 pixels wide and high, or has that much room around it',
  uncovered: 'what has the focus is not covered by anything else, going forwards and backwards',
  still: 'nothing moves by itself when the reader has asked for less motion',
  uncut: 'no text outside figures is cut off or runs into another',
} as const;

export type LookId = keyof typeof looks;
