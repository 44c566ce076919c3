import { createHash } from 'node:crypto';

const SHEET = /<link\b[^>]*\brel="stylesheet"[^>]*>/g;
const HREF = /\bhref="([^"]+)"/;

const addressOf = (tag: string): string => HREF.exec(tag)?.[1] ?? '';

/** A style sheet made of several. */
export interface JoinedSheet {
  /** Name of its file, which changes with what is in it. */
  readonly name: string;
  readonly css: string;
}

/** A page with one style sheet in place of several that follow each other. */
export interface JoinedPage {
  readonly html: string;
  /** The sheet it now asks for; undefined where there was nothing to join. */
  readonly sheet: JoinedSheet | undefined;
}

/**
 * Asks for one style sheet where a page asks for several: each request of a slow line costs a turn to the server and back, and a page
 * is not drawn before the last has come. In the order of the page, so that what overrides what stays the same.
 * @param read the text of the sheet at an address.
 * @param write the address of a file by its name.
 * @throws Error for a sheet with an `@import`, which would have to stand first.
 */
export function joinSheets(
  html: string,
  read: (address: string) => string,
  write: (name: string) => string,
): JoinedPage {
  const tags = html.match(SHEET) ?? [];
  if (tags.length < 2) return { html, sheet: undefined };
  const css = tags.map((tag) => read(addressOf(tag)).trim()).join('\n');
  if (/@import\b/.test(css)) throw new Error(`joinSheets: wish no @import, got one in ${tags.join(' ')}`);
  const name = `sheet.${createHash('sha256').update(css).digest('hex').slice(0, 8)}.css`;
  const link = `<link rel="stylesheet" href="${write(name)}">`;
  let placed = false;
  const joined = html.replace(SHEET, () => {
    const first = placed ? '' : link;
    placed = true;
    return first;
  });
  return { html: joined, sheet: { name, css: `${css}\n` } };
}
