import { cutText } from '../../figures/cut-text.ts';
import { halfSpanFor } from '../../figures/reading-band.layout.ts';
import type { BandRow } from '../../figures/reading-band.types.ts';
import { type BandRowOptions, bandRows } from '../../widgets/parts/band-rows.ts';
import type { BenchChain } from './chain.ts';
import { inputLabel } from './input-labels.ts';
import { drawnSpecification } from './reach.ts';

/** Longest name and longest statement that a row of the figure has room for, in small letters. */
const LONGEST = { label: 28, detail: 44 } as const;

/** A row with its own name and with words that fit: in full they stand in the form and in the table. */
const fitted = (row: BandRow, { sheet, rungs }: BenchChain): BandRow => ({
  ...row,
  label: cutText(
    rungs.some(({ id }) => id === row.id) ? inputLabel(sheet, row.id) : row.label,
    LONGEST.label,
  ),
  detail: cutText(row.detail, LONGEST.detail),
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
