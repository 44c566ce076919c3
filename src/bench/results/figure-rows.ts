import { brokenText, cutText } from '../../figures/cut-text.ts';
import { ROOM } from '../../figures/ReadingBandRow.tsx';
import { halfSpanFor } from '../../figures/reading-band.layout.ts';
import type { BandRow } from '../../figures/reading-band.types.ts';
import { type BandRowOptions, bandRows } from '../../widgets/parts/band-rows.ts';
import type { BenchChain } from './chain.ts';
import { inputLabel } from './input-labels.ts';
import { drawnSpecification } from './reach.ts';

/** Longest name and longest lines of a statement that a row of the figure has room for where text is spaced widely, in small letters. */
const LONGEST = { label: 28, detail: [ROOM.detail, 22] } as const;

/** Capitals and the like that a name may have beyond what its letters count. */
const SLACK = 4;

/** A name that fits, and beside its number where a narrow row writes both into one line. */
function fittedName(name: string, number: string): string {
  const cut = cutText(name, LONGEST.label);
  const room = ROOM.label - number.length;
  return cut.length > room ? cut : cutText(name, room + SLACK);
}

/** A row with its own name and with words that fit: in full they stand in the form and in the table. */
const fitted = (row: BandRow, { sheet, rungs }: BenchChain): BandRow => ({
  ...row,
  label: fittedName(
    rungs.some(({ id }) => id === row.id) ? inputLabel(sheet, row.id) : row.label,
    row.number,
  ),
  detail: brokenText(row.detail, LONGEST.detail),
});

/**
 * What the reading band of a sheet is drawn from, wherever it stands.
 * @param reachDb how far from the estimate anything is drawn.
 */
export const benchBand = (
  { chain, ...options }: BandRowOptions & { readonly chain: BenchChain },
  reachDb: number,
) => ({
  rows: bandRows({ chain, ...options }).map((row) => fitted(row, chain)),
  centreDbm: chain.result.estimate,
  halfSpanDb: halfSpanFor(reachDb),
  specification: drawnSpecification(chain),
});
