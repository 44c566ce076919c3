/** A number as printed, with a point or a comma: its value and last place in the unit that follows it, empty for none. */
export interface Read {
  readonly as: 'number';
  readonly value: number;
  readonly place: number;
  readonly unit: string;
}

/** A piece of a line: a number, a sign of a sum, a group that ends with its side, a word for "equals", or anything else. */
export type Piece =
  | Read
  | { readonly as: 'sign'; readonly text: string }
  | { readonly as: 'rest'; readonly text: string }
  | { readonly as: 'same' }
  | { readonly as: 'break' };

/** What stands on either side of an "equals". */
export type Side = readonly Exclude<Piece, { as: 'same' } | { as: 'break' }>[];

export interface Statement {
  readonly left: Side;
  readonly right: Side;
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const raised = (text: string): number =>
  Number([...text].map((sign) => (sign === '⁻' ? '-' : RAISED.indexOf(sign))).join(''));

const NUMBER =
  /^(\d+)(?:[.,](\d+))?(?: × 10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+))?(?: ?((?:dBm|dBi|dBd|dB|%|ppm|°C|[kMmµnp]?(?:W|V|A|Ω|Hz|F|m)|K)(?: RMS| peak|pp)?)(?![A-Za-z]))?/;
/** Words of a sum, and what they stand for. What begins a `rest` reaches to the end of its side. */
const WORDS: readonly (readonly [pattern: RegExp, piece: Piece])[] = [
  [/^(?:is|are|gives|give|leaves|leave)\b/, { as: 'same' }],
  [/^ten to the power of\b/i, { as: 'rest', text: '10^' }],
  [/^(?:the )?(?:square )?root of\b/i, { as: 'rest', text: 'sqrt' }],
  [/^share of a bell below\b/, { as: 'rest', text: 'bell' }],
  [/^times\b/i, { as: 'sign', text: '*' }],
  [/^lg\b/, { as: 'sign', text: 'log10' }],
];
const SIGNS: Readonly<Record<string, string>> = {
  '+': '+',
  '−': '-',
  '×': '*',
  '÷': '1/',
  '/': '/',
  '(': '(',
  ')': ')',
  '±': '±',
  '√': 'sqrt',
  π: 'pi',
};

function numberAt(text: string): { piece: Read; length: number } | undefined {
  const found = NUMBER.exec(text);
  if (found === null) return undefined;
  const [all, whole = '', decimals = '', power = '', unit = ''] = found;
  const scale = 10 ** raised(power);
  const value = Number(`${whole}.${decimals || '0'}`) * scale;
  return { piece: { as: 'number', value, place: scale * 10 ** -decimals.length, unit }, length: all.length };
}

/** The first piece of a text, and how long it is. */
function pieceAt(text: string): { piece: Piece; length: number } {
  const number = numberAt(text);
  if (number !== undefined) return number;
  for (const [pattern, piece] of WORDS) {
    const found = pattern.exec(text);
    if (found !== null) return { piece, length: found[0].length };
  }
  const power = /^[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/.exec(text)?.[0];
  if (power !== undefined)
    return { piece: { as: 'sign', text: `^(${raised(power)})` }, length: power.length };
  const first = text.charAt(0);
  if (first === '=') return { piece: { as: 'same' }, length: 1 };
  const sign = SIGNS[first];
  if (sign !== undefined) return { piece: { as: 'sign', text: sign }, length: 1 };
  return { piece: { as: 'break' }, length: /^(?:[A-Za-z’]+|.)/u.exec(text)?.[0].length ?? 1 };
}

const OF = { piece: { as: 'sign', text: '*' }, length: 2 } as const;
/** "30 % of 2 W" is a product. */
const isOf = (left: string, before: readonly Piece[]): boolean =>
  /^of \d/.test(left) && before.at(-1)?.as === 'number';

/** A line of a solution in pieces, without the site's own reader. */
export function piecesOf(line: string): readonly Piece[] {
  let left = line.replaceAll('\u00a0', ' ');
  const pieces: Piece[] = [];
  while (left !== '') {
    if (left.startsWith(' ')) {
      left = left.slice(1);
      continue;
    }
    const { piece, length } = isOf(left, pieces) ? OF : pieceAt(left);
    // after a sum a colon says what it comes to
    const isColon = left.startsWith(': ') && pieces.at(-1)?.as !== 'break';
    pieces.push(isColon ? { as: 'same' } : piece);
    left = left.slice(length);
  }
  return pieces;
}

/** A side without what only seemed to belong to it: the "times" of "4 times as large", the bracket of words. */
function trimmed(side: Side): Side {
  const last = side.at(-1);
  const opened = side.filter((piece) => piece.as === 'sign' && piece.text === '(').length;
  const closed = side.filter((piece) => piece.as === 'sign' && piece.text === ')').length;
  if (last?.as === 'sign' && (/^[-+*/(]$/.test(last.text) || (last.text === ')' && closed > opened)))
    return trimmed(side.slice(0, -1));
  const [first] = side;
  return first?.as === 'sign' && (/^[+*/]$/.test(first.text) || (first.text === '(' && opened > closed))
    ? trimmed(side.slice(1))
    : side;
}

/** A minus that belongs to its number, at the beginning of a side or behind another sign, goes into the number. */
function signed(side: Side): Side {
  return side.flatMap((piece, at) => {
    const [before, after] = [side[at - 1], side[at + 1]];
    const isFirst =
      before === undefined || before.as === 'rest' || (before.as === 'sign' && before.text !== ')');
    if (piece.as === 'sign' && piece.text === '-' && isFirst && after?.as === 'number') return [];
    const earlier = side[at - 2];
    const isSecond =
      earlier === undefined || earlier.as === 'rest' || (earlier.as === 'sign' && earlier.text !== ')');
    const isMinus = before?.as === 'sign' && before.text === '-' && isSecond;
    return piece.as === 'number' && isMinus ? [{ ...piece, value: -piece.value }] : [piece];
  });
}

const isOfSum = (piece: Piece): piece is Side[number] => piece.as !== 'same' && piece.as !== 'break';

/** All that a line says to be equal; of a = b = c both. */
export function statementsOf(line: string): readonly Statement[] {
  const pieces = piecesOf(line);
  return pieces.flatMap((piece, at) => {
    if (piece.as !== 'same') return [];
    const before = pieces.slice(0, at);
    const from = before.findLastIndex((each) => !isOfSum(each)) + 1;
    const end = pieces.findIndex((each, place) => place > at && !isOfSum(each));
    const left = signed(trimmed(before.slice(from).filter(isOfSum)));
    const right = signed(trimmed(pieces.slice(at + 1, end < 0 ? undefined : end).filter(isOfSum)));
    const hasBoth = [left, right].every((side) => side.some(({ as }) => as === 'number'));
    return hasBoth ? [{ left, right }] : [];
  });
}

/** The numbers of a line, those of its sums included. */
export const numbersOf = (line: string): readonly Read[] =>
  piecesOf(line).flatMap((piece) => (piece.as === 'number' ? [piece] : []));
