/** What every page is tried for in the browser, and the test that does it, or the part of a visit. */
export interface Everywhere {
  readonly gate: string;
  readonly words: string;
}

/** Pages that are made alike from data alone stand for each other here; the checker axe runs on each of them all the same. */
export const everywhere: readonly Everywhere[] = [
  {
    gate: 'looks',
    words:
      'The automatic checker axe finds no rule broken in light colours, nor one about colours in dark ones, target sizes of 24 pixels included; nothing is wider than a screen of 320, 1024 or 1440 pixels.',
  },
  {
    gate: 'alike',
    words: 'Pages that are made alike are tried one of each sort, and the checker axe runs on each of them.',
  },
  {
    gate: 'keyboard',
    words: 'The Tab key reaches each control, shows where it is, and gets away from it again.',
  },
  { gate: 'touch', words: 'A finger scrolls the page over each figure and each wide table.' },
  { gate: 'no-script', words: 'Without script the page says and shows the same, controls aside.' },
  { gate: 'print', words: 'What can be set in a figure is on paper as a table.' },
  { gate: 'states', words: 'What the site’s own links carry into a page is what prints, with its figure.' },
];
