import { baseOf, type Decimal, type Style, styleWith } from '../style.ts';
import { asciiWords, bbcodeWords, markdownWords, plainWords } from './escape.ts';
import { shareableLink } from './link.ts';
import type { Line, LineKind, Summary } from './piece.ts';
import { HELD_SPACE, wrapped } from './wrap.ts';

/** A line in one style, the reader's words treated as the format needs. */
function text(style: Style, words: (foreign: string) => string, { pieces }: Line): string {
  const typographic = (own: string) => (baseOf(style) === 'ascii' ? own : own.replaceAll("'", '\u2019'));
  return pieces
    .map((piece) => {
      if ('foreign' in piece) return words(piece.foreign);
      if ('sentence' in piece) return words(piece.sentence(style));
      return typographic('own' in piece ? piece.own : piece.write(style));
    })
    .join('');
}

/** Spaces inside numbers are held, so that no number parts from its unit at a line end. */
const held = (line: Line): Line => ({
  ...line,
  pieces: line.pieces.map((piece) =>
    'write' in piece ? { write: (style) => piece.write(style).replaceAll(' ', HELD_SPACE) } : piece,
  ),
});

/** Plain ASCII, lines of at most 72 columns (the address alone stays whole, in angle brackets: RFC 3986, appendix C). */
export function asPlainText({ lines, link }: Summary, decimal: Decimal = 'point'): string {
  const style = styleWith('ascii', decimal);
  const url = link === undefined ? undefined : shareableLink(link);
  const body = lines.flatMap((line) => wrapped(text(style, asciiWords, held(line))));
  return [...body, ...(url === undefined ? [] : [`<${url}>`])].join('\n');
}

/** As plain text, with the true signs and the reader's words as they are; a line for each statement. */
export function asUnicodeText({ lines, link }: Summary, decimal: Decimal = 'point'): string {
  const style = styleWith('unicode', decimal);
  const url = link === undefined ? undefined : shareableLink(link);
  const body = lines.map((line) => text(style, plainWords, line));
  return [...body, ...(url === undefined ? [] : [`<${url}>`])].join('\n');
}

/** Markdown: the result in bold, the rest as a list. */
export function asMarkdown({ lines, link }: Summary, decimal: Decimal = 'point'): string {
  const style = styleWith('unicode', decimal);
  const url = link === undefined ? undefined : shareableLink(link);
  const [first = '', ...rest] = lines.map((line) => text(style, markdownWords, line));
  const items = [...rest, ...(url === undefined ? [] : [`<${url}>`])].map((item) => `- ${item}`);
  return [`**${first}**`, '', ...items].join('\n');
}

/** BBCode, only the tags that every board knows: the result in bold, the rest as a list. */
export function asBbcode({ lines, link }: Summary, decimal: Decimal = 'point'): string {
  const style = styleWith('unicode', decimal);
  const url = link === undefined ? undefined : shareableLink(link);
  const [first = '', ...rest] = lines.map((line) => text(style, bbcodeWords, line));
  const items = [...rest, ...(url === undefined ? [] : [`[url]${url}[/url]`])].map((item) => `[*]${item}`);
  return [`[b]${first}[/b]`, '[list]', ...items, '[/list]'].join('\n');
}

/** Lines that a sentence for the ear or under a figure is made of. */
const SPOKEN_LINES: readonly LineKind[] = ['result', 'dominant', 'verdict'];

/** The result in running sentences, shown or spoken: value, dominant part and verdict, unless other lines are asked for. */
export function asSentence(
  style: 'shown' | 'spoken',
  { lines }: Summary,
  kinds: readonly LineKind[] = SPOKEN_LINES,
): string {
  return lines
    .filter(({ kind }) => kinds.includes(kind))
    .map((line) => text(style, plainWords, line))
    .map((sentence) => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`))
    .join(' ');
}
