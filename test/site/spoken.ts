import { BARE } from '../text/bare-symbols.ts';
import type { Site } from './links.ts';

/** What is said and not shown: names, descriptions and values of controls and figures. */
const SPOKEN = [
  /\saria-(?:label|valuetext|description|roledescription)="([^"]*)"/g,
  /\salt="([^"]*)"/g,
  /<(?:svg:)?(?:desc)\b[^>]*>([\s\S]*?)<\/desc>/g,
  /<svg\b[^>]*>\s*<title\b[^>]*>([\s\S]*?)<\/title>/g,
] as const;

const plain = (markup: string): string =>
  markup
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replaceAll(/&(amp|lt|gt|quot|nbsp);/g, (_, name: string) => ENTITIES[name] ?? '')
    .trim();
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', nbsp: '\u00a0' };

/** Everything of a page that is said and not shown. */
export const spokenTexts = (html: string): readonly string[] =>
  SPOKEN.flatMap((pattern) => [...html.matchAll(pattern)].map((match) => plain(match[1] ?? '')));

/** Names that an example gave to a thing, and the numbers of documents: said as they are written, since so they stand beside it. */
const NAMES = /\b\d+ dB pads?\b|\b[A-Z]{2,}-[A-Z]?\d+(?:[:/]\d+)+/g;
/** A name that holds the words which stand on its link (WCAG 2.5.3) has them as they stand. */
const LINKED = /: link to this step$/;

/** Texts of a page that are said with the symbol of a unit or a sign in place of a word. */
export const bareSymbols = ({ pages }: Site): readonly string[] =>
  pages.flatMap(({ file, html }) =>
    [...new Set(spokenTexts(html))]
      .filter((text) => !LINKED.test(text) && BARE.test(text.replaceAll(NAMES, '')))
      .map((text) => `${file}: “${text}” says a sign or unit; write the word, or a name into NAMES`),
  );
