/** What the deck says, apart from all that its steps say: it runs before the wall is drawn, and they come after. */
export const deckStrings = {
  step: (at: number, of: number, title: string): string => `Step ${at} of ${of}: ${title}`,
  blanked: 'The wall is blank.',
  shownAgain: 'The wall shows the step again.',
} as const;
