/** Letters of the scripts that run from right to left: Hebrew to Arabic Extended, their presentation forms, and those beyond U+FFFF. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** First strong isolate and pop directional isolate (Unicode Standard Annex 9). */
const OPEN = '\u2068';
const CLOSE = '\u2069';

/** Whether something in a text is kept apart already. */
const isKeptApart = (text: string): boolean => text.includes(OPEN);

/** A number that the reader's decimal sign would change. */
const DECIMALS = /\d\.\d/;

const apart = (text: string, signs: RegExp): string =>
  signs.test(text) && !isKeptApart(text) ? `${OPEN}${text}${CLOSE}` : text;

/**
 * Words of a reader within a sentence whose numbers have the reader's decimal sign as the sentence has: where they run from right to left,
 * kept apart by isolates, so that the numbers beside them stay where they are.
 */
export const inDirection = (text: string): string => apart(text, RIGHT_TO_LEFT);

/**
 * A name as it stands within a sentence or a row of figures: kept apart where it runs from right to left, and where a number in it has a
 * point, which is part of the name whatever sign the numbers beside it have. Other names stay as they are.
 */
export const isolated = (name: string): string => apart(inDirection(name), DECIMALS);

/**
 * Text cleaned by `clean`, each part that is kept apart for itself: what comes out has as many isolates opened as closed, and none but around
 * what runs from right to left. For what leaves the page, where nothing changes a name.
 */
export const cleanedApart = (text: string, clean: (part: string) => string): string =>
  isKeptApart(text)
    ? text
        .split(/(\u2068[^\u2068\u2069]*\u2069)/)
        .map((part, index) => (index % 2 === 1 ? inDirection(clean(part)) : clean(part)))
        .join('')
    : clean(text);

/** The same text with nothing kept apart, for what has no isolates: ASCII, tables of plain cells. */
export const withoutIsolates = (text: string): string => text.replace(/[\u2068\u2069]/g, '');
