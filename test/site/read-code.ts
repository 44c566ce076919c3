/**
 * Reads a QR code from its modules, by the rules of ISO/IEC 18004 as they are widely published, written from memory and sharing nothing with what
 * makes the codes: level M, byte mode, versions 1 to 9. Nothing is mended: a single wrong module is an error.
 */
export type Modules = readonly (readonly boolean[])[];

/** Error-correction codewords a block, and blocks, of level M by version. */
const PER_BLOCK = [10, 16, 26, 18, 24, 16, 18, 22, 22];
const BLOCKS = [1, 1, 1, 2, 2, 4, 4, 4, 5];

type Mask = (x: number, y: number) => boolean;
const MASKS: readonly Mask[] = [
  (x, y) => (x + y) % 2 === 0,
  (_, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
];

/** The mask that the format information names. @throws RangeError if it is damaged or names another level than M. */
function maskOf(modules: Modules): Mask {
  const places = [0, 1, 2, 3, 4, 5, 7, 8].map((y) => [8, y] as const);
  const all = [...places, ...[7, 5, 4, 3, 2, 1, 0].map((x) => [x, 8] as const)];
  const bits = all.reduce((sum, [x, y], i) => sum | (Number(modules[y]?.[x]) << i), 0) ^ 0x5412;
  let rest = bits;
  for (let i = 14; i >= 10; i--) if ((rest >> i) & 1) rest ^= 0x537 << (i - 10);
  const mask = MASKS[(bits >> 10) & 7];
  if (rest !== 0 || bits >> 13 !== 0 || mask === undefined)
    throw new RangeError(`maskOf: the format must be whole and of level M, got ${bits.toString(2)}`);
  return mask;
}

/** Middles of the alignment patterns along a side. */
const alignments = (version: number, size: number): readonly number[] => {
  if (version === 1) return [];
  return version < 7 ? [6, size - 7] : [6, (size - 1) / 2, size - 7];
};

/** Whether a module belongs to a pattern that carries no data. */
function carriesNone(x: number, y: number, { version, size }: { version: number; size: number }): boolean {
  const corner = (x < 9 && y < 9) || (x >= size - 8 && y < 9) || (x < 9 && y >= size - 8);
  const versions = version >= 7 && ((x >= size - 11 && y < 6) || (y >= size - 11 && x < 6));
  const middles = alignments(version, size);
  const aligned = middles.some((cx) =>
    middles.some((cy) => {
      const inCorner =
        [cx, cy].every((c) => c === 6) || (cx === 6 && cy === size - 7) || (cx === size - 7 && cy === 6);
      return !inCorner && Math.abs(x - cx) <= 2 && Math.abs(y - cy) <= 2;
    }),
  );
  return corner || x === 6 || y === 6 || versions || aligned;
}

/** Codewords in the order of their modules: two columns at a time from the right, up and down in turn, column 6 left out. */
function codewords(modules: Modules, version: number): readonly number[] {
  const size = modules.length;
  const mask = maskOf(modules);
  const bits: number[] = [];
  for (let right = size - 1, up = true; right > 0; right -= 2, up = !up) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step++) {
      const y = up ? size - 1 - step : step;
      for (const x of [right, right - 1])
        if (!carriesNone(x, y, { version, size })) bits.push(Number(modules[y]?.[x] !== mask(x, y)));
    }
  }
  return Array.from({ length: Math.floor(bits.length / 8) }, (_, i) =>
    Number.parseInt(bits.slice(8 * i, 8 * i + 8).join(''), 2),
  );
}

/** Twice a field element of GF(256) by the standard's polynomial. */
const doubled = (a: number): number => ((a << 1) ^ (a >= 128 ? 0x11d : 0)) & 0xff;
function product(a: number, b: number): number {
  let sum = 0;
  for (let i = 7; i >= 0; i--) sum = doubled(sum) ^ ((b >> i) & 1 ? a : 0);
  return sum;
}

/** Whether a block is a multiple of the generator: zero at its first so many powers of two. */
function isWhole(block: readonly number[], corrections: number): boolean {
  for (let i = 0, root = 1; i < corrections; i++, root = doubled(root))
    if (block.reduce((sum, word) => product(sum, root) ^ word, 0) !== 0) return false;
  return true;
}

/** The data of the blocks in a row, each held against its own error correction. */
function dataOf(words: readonly number[], version: number): readonly number[] {
  const [corrections = 0, count = 1] = [PER_BLOCK[version - 1], BLOCKS[version - 1]];
  const short = Math.floor(words.length / count) - corrections;
  const long = words.length % count;
  const blocks = Array.from({ length: count }, (): number[] => []);
  const dataLength = words.length - count * corrections;
  words.forEach((word, at) => {
    // the codewords behind the last whole turn belong to the long blocks, which are the last
    const turn =
      at < short * count
        ? at % count
        : at < dataLength
          ? count - long + (at - short * count)
          : (at - dataLength) % count;
    blocks[turn]?.push(word);
  });
  if (!blocks.every((block) => isWhole(block, corrections)))
    throw new RangeError('dataOf: every block must fit its error correction, got one that does not');
  return blocks.flatMap((block) => block.slice(0, -corrections));
}

/** The text of a code. @throws RangeError for a code that is damaged, or of a kind that is not read here. */
export function readCode(modules: Modules): string {
  const version = (modules.length - 17) / 4;
  if (!Number.isInteger(version) || version < 1 || version > PER_BLOCK.length)
    throw new RangeError(`readCode: a code must have 21 to 53 modules a side, got ${modules.length}`);
  const bits = dataOf(codewords(modules, version), version)
    .map((word) => word.toString(2).padStart(8, '0'))
    .join('');
  const number = (from: number, length: number): number =>
    Number.parseInt(bits.slice(from, from + length), 2);
  if (number(0, 4) !== 4)
    throw new RangeError(`readCode: the text must be in bytes, got mode ${number(0, 4)}`);
  return new TextDecoder().decode(Uint8Array.from({ length: number(4, 8) }, (_, i) => number(12 + 8 * i, 8)));
}

/** Modules of a code that is drawn as runs, `M4 5h7v1h-7z`, in a square of a size with its quiet zone of four. */
export function modulesOf(size: number, path: string): Modules {
  const dark = new Set<string>();
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
    for (let i = 0; i < Number(width); i++) dark.add(`${Number(x) + i - 4} ${Number(y) - 4}`);
  const inside = size - 8;
  if ([...dark].some((at) => at.split(' ').some((c) => Number(c) < 0 || Number(c) >= inside)))
    throw new RangeError('modulesOf: the quiet zone must be empty, got a dark module in it');
  return Array.from({ length: inside }, (_, y) =>
    Array.from({ length: inside }, (__, x) => dark.has(`${x} ${y}`)),
  );
}
