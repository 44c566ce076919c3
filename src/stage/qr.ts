import { encode } from 'uqr';

/** A code as one path on a grid of modules, with the quiet zone of four that the standard (ISO/IEC 18004) asks for. */
export interface QrDrawing {
  /** Modules along a side, quiet zone included. */
  readonly size: number;
  readonly path: string;
}

/** The code of an address, with the correction of level M: a smudge or a reflection on the wall is made good. */
export function qrDrawing(address: string): QrDrawing {
  const { data, size } = encode(address, { ecc: 'M', border: 4 });
  const runs = data.flatMap((row, y) =>
    row.flatMap((dark, x) => {
      if (!dark || row[x - 1]) return [];
      const end = row.indexOf(false, x);
      return `M${x} ${y}h${(end === -1 ? size : end) - x}v1H${x}z`;
    }),
  );
  return { size, path: runs.join('') };
}
