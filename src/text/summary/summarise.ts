import type { Caution, MethodUnit, Result, Statement } from '#compute';
import { quantityText } from '../quantity-text.ts';
import { statedDecimals, statementText } from '../statement-text.ts';
import type { Style } from '../style.ts';
import type { UnitName } from '../units.ts';
import { cautionLine } from './caution-line.ts';
import { joined, type Line, line, type Piece, type Summary } from './piece.ts';
import { dominantLine, resultLine, type Stated, wholeLine, worstLine } from './result-lines.ts';
import { type Judged, verdictLine } from './verdict-line.ts';

/** One input of the result, by the id that the result's budget has for it. */
export interface Part {
  readonly id: string;
  /** The reader's own words. */
  readonly label: string;
  /** Loss in dB that was added back; left out of the line where it is 0 or absent. */
  readonly lossDb?: number;
  /** What a document states of it. */
  readonly stated?: { readonly statement: Statement; readonly unit: MethodUnit };
}

/** What a summary is made from: numbers from the sums, words from the reader or the page. */
export interface SummaryInput {
  /** What was measured: "Carrier power at the transmitter's socket". */
  readonly what: string;
  readonly result: Result;
  /** Unit of the estimate; a level in dBm is given in watts as well. */
  readonly unit: UnitName;
  readonly parts: readonly Part[];
  /** Mean indication and number of readings. */
  readonly readings?: { readonly mean: number; readonly count: number; readonly unit: UnitName };
  readonly judged?: Judged;
  readonly cautions?: readonly Caution[];
  /** "steady carrier", "50 ohm" ... */
  readonly assumptions?: readonly string[];
  /** With what it was worked out, version included. */
  readonly made?: string;
  /** Address that opens the same state. */
  readonly link?: string;
}

/** Readings never carry more decimals than this. */
const MOST_DECIMALS = 3;

function readingsLine({ readings, parts }: SummaryInput): Line | undefined {
  if (readings === undefined) return undefined;
  const { mean, count, unit } = readings;
  const decimals = Math.min(statedDecimals(mean), MOST_DECIMALS);
  const value = (style: Style) => quantityText(style, { value: mean, decimals, unit });
  const lead = count === 1 ? 'Reading ' : `Mean of ${count} readings `;
  const losses = parts.flatMap(({ label, lossDb = 0 }) => (lossDb === 0 ? [] : [{ label, lossDb }]));
  const added = losses.map(({ label, lossDb }): readonly (Piece | string)[] => [
    { foreign: label },
    ' ',
    {
      write: (style) =>
        quantityText(style, {
          value: lossDb,
          decimals: Math.min(statedDecimals(lossDb), MOST_DECIMALS),
          unit: 'dB',
        }),
    },
  ]);
  const tail = added.length === 0 ? [] : ['; added back: ', ...joined(added, ', ').flat()];
  return line('readings', lead, value, ...tail);
}

function takenLine({ parts }: SummaryInput): Line | undefined {
  const taken = parts.flatMap(({ label, stated }) => (stated === undefined ? [] : [{ label, stated }]));
  if (taken.length === 0) return undefined;
  const items = taken.map(({ label, stated }): readonly (Piece | string)[] => [
    { foreign: label },
    ' ',
    { write: (style) => statementText(style, stated) },
  ]);
  return line('taken', 'Taken: ', ...joined(items, '; ').flat());
}

/** A result in lines, with nothing left out that another person needs to check it. */
export function summarise(input: SummaryInput): Summary {
  const { what, result, unit, parts, judged, cautions = [], assumptions = [], made, link } = input;
  const stated: Stated = { result, unit };
  const labels = new Map(parts.map(({ id, label }) => [id, label]));
  const labelOf = (id: string): string => labels.get(id) ?? id;
  const lines = [
    resultLine(what, stated),
    wholeLine(stated),
    readingsLine(input),
    takenLine(input),
    worstLine(stated, labelOf),
    dominantLine(stated, labelOf),
    judged && verdictLine(stated, judged),
    ...cautions.map((caution) => cautionLine(caution, labelOf)),
    assumptions.length > 0
      ? line(
          'assumes',
          'Assumed: ',
          ...joined(
            assumptions.map((foreign) => ({ foreign })),
            '; ',
          ),
        )
      : undefined,
    made === undefined ? undefined : line('made', 'Worked out with ', { foreign: made }),
  ];
  return { lines: lines.filter((one) => one !== undefined), link };
}
