import fc from 'fast-check';

/** Texts that somebody who means no good, or a broken program, puts where a name or a number belongs. */
export const hostileTexts = [
  '<script>globalThis.ran=1</script>',
  '<img src=x onerror="globalThis.ran=1">',
  '"><svg onload=globalThis.ran=1>',
  "'-globalThis.ran=1-'",
  'javascript:globalThis.ran=1',
  'data:text/html,<script>globalThis.ran=1</script>',
  '</textarea></title><style>*{display:none}</style>',
  '{{constructor.constructor("globalThis.ran=1")()}}',
  `\u0024{globalThis.ran=1}`,
  '=HYPERLINK("https://elsewhere.example/")',
  '[a](javascript:globalThis.ran=1)',
  '[url=javascript:globalThis.ran=1]a[/url]',
  '\u202eabc\u202c\u2066def\u2069',
  'a\u0000b\u0007c\u001b[31md\u009be',
  '\ud800 half',
  '\ufeff\u200b\u2028\u2029\u00ad',
  '__proto__',
  'constructor',
  'hasOwnProperty',
  'toString',
  '../../../../etc/hosts',
  '1e999',
  '-0',
  'NaN',
  '9'.repeat(400),
  'long '.repeat(3000),
  '\u0301'.repeat(2000),
] as const;

export const anyHostileText: fc.Arbitrary<string> = fc.constantFrom(...hostileTexts);
const anyKey = fc.constantFrom('__proto__', 'constructor', 'prototype', 'toString', 'v', 'zip', '', 'a');

type Change = (address: string, at: number) => string;
const placeIn = (text: string, at: number): number => Math.floor(at * text.length);

/** Another value for one of the pairs. */
const valued =
  (value: string): Change =>
  (address, at) => {
    const pairs = address.split('&');
    const which = Math.min(pairs.length - 1, Math.floor(at * pairs.length));
    return pairs.map((pair, index) => (index === which ? `${pair.split('=')[0]}=${value}` : pair)).join('&');
  };

const anyChange: fc.Arbitrary<Change> = fc.oneof(
  anyHostileText.map(valued),
  anyHostileText.map((text) => valued(encodeURIComponent(text.toWellFormed()))),
  anyHostileText.map(
    (text): Change =>
      (address) =>
        `${address}&${text}`,
  ),
  fc.tuple(anyKey, anyHostileText).map(
    ([key, text]): Change =>
      (address) =>
        `${key}=${text.slice(0, 99)}&${address}`,
  ),
  fc.nat({ max: 40 }).map(
    (length): Change =>
      (address, at) => {
        const place = placeIn(address, at);
        return address.slice(0, place) + address.slice(place + length);
      },
  ),
  fc.constantFrom('%', '%00', '%25', '.', '=', '&&', '#', '?', '\u202e', '\0', 'e9', '-').map(
    (piece): Change =>
      (address, at) => {
        const place = placeIn(address, at);
        return address.slice(0, place) + piece + address.slice(place);
      },
  ),
  fc.constant<Change>((address, at) => address.slice(0, placeIn(address, at))),
  fc.constant<Change>((address) => `${address}&${address}`),
);

/** An address that was once right, and what was done to it. */
export const damaged = (address: string): fc.Arbitrary<string> =>
  fc
    .array(fc.tuple(anyChange, fc.double({ min: 0, max: 1, noNaN: true })), { minLength: 1, maxLength: 4 })
    .map((changes) => changes.reduce((text, [change, at]) => change(text, at), address));

const anyJunk: fc.Arbitrary<unknown> = fc.oneof(
  anyHostileText,
  fc.constantFrom(null, true, 0, -1, 1e308, [], {}, [[]], { __proto__: null }, 'v', ''),
  fc.json({ maxDepth: 2 }).map((text): unknown => JSON.parse(text)),
);

/** How many values lie in a value, itself included. */
const countOf = (value: unknown): number =>
  typeof value === 'object' && value !== null
    ? 1 + Object.values(value).reduce((sum: number, part) => sum + countOf(part), 0)
    : 1;

/** JSON of the value with other JSON in the place of one of its values, or behind another key. */
function replaced(value: unknown, which: number, junk: unknown, key: string | undefined): string {
  let at = -1;
  const write = (part: unknown): string => {
    at += 1;
    if (at === which && key === undefined) return JSON.stringify(junk) ?? 'null';
    if (Array.isArray(part)) return `[${part.map(write).join(',')}]`;
    if (typeof part !== 'object' || part === null) return JSON.stringify(part) ?? 'null';
    const hit = at === which;
    const pairs = Object.entries(part).map(([name, inner]) => `${JSON.stringify(name)}:${write(inner)}`);
    // written as text: an object cannot be given such a key by hand
    if (hit) pairs.push(`${JSON.stringify(key)}:${JSON.stringify(junk) ?? 'null'}`);
    return `{${pairs.join(',')}}`;
  };
  return write(value);
}

type Bytes = Uint8Array<ArrayBuffer>;
const encoder = new TextEncoder();

/** A file that was once right, with something else in it, or hurt on its way. */
export const damagedFile = (value: unknown): fc.Arbitrary<Bytes> => {
  const many = countOf(value);
  const exchanged = fc
    .tuple(fc.nat({ max: many - 1 }), anyJunk, fc.option(anyKey, { nil: undefined }))
    .map(([which, junk, key]) => replaced(value, which, junk, key));
  const whole = JSON.stringify(value);
  return fc.oneof(
    { weight: 8, arbitrary: exchanged.map((text) => encoder.encode(text)) },
    { weight: 1, arbitrary: fc.nat({ max: whole.length }).map((end) => encoder.encode(whole.slice(0, end))) },
    {
      weight: 1,
      arbitrary: fc.tuple(fc.nat({ max: whole.length - 1 }), fc.nat({ max: 255 })).map(([at, byte]) => {
        const bytes = encoder.encode(whole);
        bytes[at] = byte;
        return bytes;
      }),
    },
    { weight: 1, arbitrary: fc.nat({ max: 3000 }).map((depth) => encoder.encode('['.repeat(depth) + whole)) },
  );
};
