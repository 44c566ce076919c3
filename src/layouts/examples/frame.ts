/** Parts that every example has around its sum: headings of its page, and steps on the wall by their anchors. */
export const exampleFrame = {
  question: 'The question',
  chain: 'The band along the chain',
  figure: 'What if it were otherwise?',
  tries: 'The same, tried a million times',
  answer: 'The answer',
  mistake: 'The mistake to guard against',
  care: 'Take care',
} as const;

/** What the figure of a sum is called: with the load forgotten there is no number, so that it is shown with the load in its place. */
export const figureTitle = (slug: string): string =>
  slug === 'load-forgotten' ? 'Measured again, with its load' : exampleFrame.figure;

/** What a reader is told who changes numbers in an example's figure, or comes by an address that does. */
export const changedStrings = {
  follows:
    'If a number in this figure is changed, by you or by the address that you followed, the figure changes and nothing else on this page does: all other numbers stay the example’s. For a whole result with your own,',
  open: 'open the example with your own numbers',
  text: 'The text gives the example’s own numbers, whatever was changed in the figure.',
} as const;

/** Sentences that the page of an example and the wall both say. */
export const exampleStrings = {
  invented: 'The question, the equipment and every figure given are invented; every result is computed.',
  manualFirst: 'The equipment’s manual, your licence and the rules of your country come first.',
} as const;
