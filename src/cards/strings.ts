const FIGURE = 'Below it the figure of the page, with these numbers.';

/** Words of the cards and of what is said to those who do not see them. */
export const cardStrings = {
  site: { title: 'What power really leaves it?' },
  bandAlt: ({ title, level, watts }: { title: string; level: string; watts: string }): string =>
    `${title} ${level}, or ${watts}. Below it a band that widens from part to part, on an axis of levels.`,
  outcomeAlt: ({ title, big, small }: { title: string; big: string; small: string }): string =>
    `${title}: ${big}. ${small}. ${FIGURE}`,
  alt: ({ title, big, small }: { title: string; big: string; small: string }): string =>
    `${title} ${big} ${small}. ${FIGURE}`,
} as const;
