import { encode } from 'uqr';

/** A square code that a camera reads (QR, ISO/IEC 18004), as the outline of its dark modules. */
export interface AddressCode {
  /** Modules along a side, the quiet zone of four at each end included. */
  readonly size: number;
  /** Path data, a module a unit. */
  readonly path: string;
}

/** Light modules around the code, as many as the standard asks for. */
const QUIET = 4;

/** The code of an address, for paper and for the wall: 15 % of it may be soiled, or lost in a reflection (level M). */
export function addressCode(address: string): AddressCode {
  const { data, size } = encode(address, { ecc: 'M', border: 0 });
  const path = data.flatMap((row, y) =>
    runsOf(row).map(([x, width]) => `M${x + QUIET} ${y + QUIET}h${width}v1h-${width}z`),
  );
  return { size: size + 2 * QUIET, path: path.join('') };
}

/** Runs of dark modules of a row: where each begins, and how many. */
function runsOf(row: readonly boolean[]): readonly (readonly [x: number, width: number])[] {
  return row.flatMap((dark, x) => {
    if (!dark || row[x - 1] === true) return [];
    const end = row.indexOf(false, x);
    return [[x, (end < 0 ? row.length : end) - x] as const];
  });
}
