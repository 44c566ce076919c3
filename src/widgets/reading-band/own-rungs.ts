import { fittingText } from '../../figures/cut-text.ts';
import { limits, linkOf } from '../../sheet/link.ts';
import type { Link, Sheet } from '../../sheet/sheet.ts';
import { cleanText } from '../../text/clean.ts';

/** How a rung of the reader's own is stated: plain limits, or a certificate's U with k = 2. */
export type OwnForm = 'limits' | 'expanded';

/** A rung of the reader's own, as the address tells it. */
export interface OwnRung {
  readonly name: string;
  readonly form: OwnForm;
  /** Half-width of the limits, or U, in dB. */
  readonly amount: number;
}

/** Most rungs that a reader may add: the figure has to fit a screen. */
export const MOST_OWN = 6;
/** Most letters of a rung's name, and its room in small ones: what stands above its strip at 320 pixels, widely spaced. */
export const LONGEST_NAME = 24;
const ROOM = 29;
/** What a new rung adds, in dB: enough to be seen. */
const FIRST_AMOUNT_DB = 0.2;

const PREFIX = 'own';

/** Whether a link was added by the reader. */
export const isOwn = ({ id }: Pick<Link, 'id'>): boolean => id.startsWith(PREFIX);

const ownLink = (id: string, { name, form, amount }: OwnRung): Link =>
  linkOf({
    id,
    label: name,
    kind: 'other',
    statement: form === 'limits' ? limits(amount) : { form: 'expanded', expanded: amount, coverageFactor: 2 },
    source: 'judged',
  });

/** A name as it may stand in the figure: one line, no longer than it has room. */
const ownName = (name: string): string =>
  cleanText(fittingText(cleanText(name).slice(0, LONGEST_NAME), ROOM));

/** The sheet with these rungs of the reader's own next to the transmitter, and no others. */
export const withOwn = (sheet: Sheet, own: readonly OwnRung[]): Sheet => ({
  ...sheet,
  links: [
    ...sheet.links.filter((link) => !isOwn(link)),
    ...own
      .slice(0, MOST_OWN)
      .map((rung, index) => ownLink(`${PREFIX}${index + 1}`, { ...rung, name: ownName(rung.name) })),
  ],
});

/** One rung more, next to the transmitter; unchanged where there is no room for another. */
export function addRung(sheet: Sheet, { name, form }: Pick<OwnRung, 'name' | 'form'>): Sheet {
  const own = sheet.links.filter(isOwn);
  const free = Array.from({ length: MOST_OWN }, (_, index) => `${PREFIX}${index + 1}`).find(
    (id) => !own.some((link) => link.id === id),
  );
  if (free === undefined) return sheet;
  return {
    ...sheet,
    links: [...sheet.links, ownLink(free, { name: ownName(name), form, amount: FIRST_AMOUNT_DB })],
  };
}

/** Without one rung, prepared or own. */
export const withoutRung = (sheet: Sheet, id: string): Sheet => ({
  ...sheet,
  links: sheet.links.filter((link) => link.id !== id),
});

/** A rung of the reader's own by another name; unchanged for any other. */
export const withName = (sheet: Sheet, id: string, name: string): Sheet => ({
  ...sheet,
  links: sheet.links.map((link) =>
    link.id === id && isOwn(link) ? { ...link, label: ownName(name) } : link,
  ),
});
