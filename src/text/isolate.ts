/** Letters of the scripts that run from right to left: Hebrew to Arabic Extended, their presentation forms, and those beyond U+FFFF. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** First strong isolate and pop directional isolate (Unicode Standard Annex 9). */
const [OPEN, CLOSE] = ['\u2068', '\u2069'];

/** Whether something in a text is kept apart already. */
const isKeptApart = (text: string): boolean => text.includes(OPEN);

/**
 * A name as it stands within a sentence or a row of figures: where it runs from right to left, kept apart by isolates, so that the numbers
 * beside it stay where they are. Other names stay as they are.
 */
export const isolated = (name: string): string =>
  RIGHT_TO_LEFT.test(name) && !isKeptApart(name) ? `${OPEN}${name}${CLOSE}` : name;

/** Text cleaned by `clean`, each part that is kept apart for itself: what comes out has as many isolates opened as closed. */
export const cleanedApart = (text: string, clean: (part: string) => string): string =>
  isKeptApart(text)
    ? text
        .split(/(\u2068[^\u2068\u2069]*\u2069)/)
        .map((part, index) => (index % 2 === 1 ? `${OPEN}${clean(part)}${CLOSE}` : clean(part)))
        .join('')
    : clean(text);

/** The same text with nothing kept apart, for what has no isolates: ASCII, tables of plain cells. */
export const withoutIsolates = (text: string): string => text.replace(/[\u2068\u2069]/g, '');
