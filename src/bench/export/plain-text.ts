import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import { isolated } from '../../text/isolate.ts';
import { fewestDecimals } from '../../text/place.ts';
import { dbText } from '../../text/quantity-text.ts';
import { type Decimal, styleWith } from '../../text/style.ts';
import { cautionLine } from '../../text/summary/caution-line.ts';
import { inForm, type TextForm } from '../../text/summary/forms.ts';
import { type Line, line, type Summary } from '../../text/summary/piece.ts';
import { inputLabel } from '../results/input-labels.ts';
import { type PointResult, pointResult } from '../results/point-result.ts';
import { cautionsAt, largestPowerAt } from '../words/caution-elsewhere.ts';
import { concerning } from '../words/caution-words.ts';
import { measurandText } from '../words/measured-words.ts';
import { pointLabel } from '../words/point-order.ts';
import { pointLines } from './point-lines.ts';
import { chainLines, methodLine, recordLinesOf, unstopped } from './sheet-lines.ts';
import { textStrings as strings } from './text-strings.ts';

/** Everything that a record of a sheet is made from. */
export interface SheetRecord {
  readonly measurement: Measurement;
  /** As typed: who, when, with what, and the log of what was agreed. */
  readonly entries: SheetEntries;
  /** One a point, in the order of the measurement's points. */
  readonly results: readonly PointResult[];
  /** Version of the site that worked it out: it stays in texts that are quoted for years. */
  readonly version: string;
  /** What the validity checks say, a sentence each. */
  readonly checks?: readonly string[] | undefined;
  /** Address that opens the same sheet. */
  readonly link?: string | undefined;
  /** What stands in place of an address that is too long. */
  readonly withoutLink?: string | undefined;
  /** Decimal sign of every number that is written here; a point unless given. */
  readonly decimal?: Decimal | undefined;
}

/**
 * A whole sheet in lines, with nothing left out that another person needs to check it: every point with its raw readings, method
 * and set-up, the chain, what was agreed and changed, the record, cautions, and the address that opens the same sheet.
 */
export function sheetSummary(record: SheetRecord): Summary {
  const { measurement, entries, results, checks = [], link, decimal = 'point' } = record;
  const { points } = measurement;
  const title = isolated(measurement.title);
  const isOnly = points.length === 1;
  const at = isOnly ? points[0]?.frequencyHz : undefined;
  const measurand = inSentence(unstopped(measurandText(styleWith('ascii', decimal), measurement, at)));
  const labelOf = ({ point }: PointResult): string =>
    pointLabel(
      styleWith('unicode', decimal),
      point,
      points.findIndex(({ id }) => id === point.id),
    );
  const lines = [
    ...(isOnly
      ? results.flatMap((result) => pointLines(`${title}, ${measurand}`, result, true))
      : [
          line(
            'measured',
            { foreign: title },
            ': ',
            { foreign: measurand },
            `; ${strings.points(points.length)}`,
          ),
          ...results.flatMap((result) => pointLines(labelOf(result), result, false)),
        ]),
    methodLine(measurement),
    ...scatterLines(measurement),
    ...chainLines(measurement),
    ...recordLinesOf(entries),
    ...checks.map((check) => line('checks', strings.check, { foreign: unstopped(check) })),
    ...cautionLines(results, isOnly ? undefined : labelOf),
    ...closingLines(record),
  ];
  return { lines, link };
}

/** The record as text: plain ASCII of at most 72 columns, unless another form is asked for. */
export const resultAsText = (record: SheetRecord, form: TextForm = 'ascii'): string =>
  inForm(form, sheetSummary(record), record.decimal);

/** The same with every point worked out anew. */
export const recordAsText = (record: Omit<SheetRecord, 'results'>, form?: TextForm): string => {
  const { measurement } = record;
  const results = measurement.points.map(({ id }) => pointResult(measurement, id));
  return resultAsText({ ...record, results }, form);
};

/** What holds for every record: what is assumed, how it is rounded, what worked it out, and where no address leads back, why. */
const closingLines = ({ version, withoutLink }: SheetRecord): readonly Line[] => [
  line('assumes', strings.assumes),
  line('assumes', strings.rounding),
  line('made', strings.made(version)),
  ...(withoutLink === undefined ? [] : [line('made', withoutLink)]),
];

/** Words that begin a sentence of their own, within another. */
const inSentence = (words: string): string => `${words[0]?.toLowerCase() ?? ''}${words.slice(1)}`;

/** What is known of the scatter where a point has one reading only. */
function scatterLines({ repeatability, points }: Measurement): readonly Line[] {
  if (!points.some(({ columns }) => columns.readings.length === 1)) return [];
  if (repeatability === undefined) return [line('readings', strings.noScatter)];
  const { standardDeviationDb: db } = repeatability;
  return [
    line('readings', (style) => strings.scatterKnown(dbText(style, { db, decimals: fewestDecimals(db, 4) }))),
  ];
}

/** The cautions of the point with the largest power: what the chain stands there it stands at all points. */
function cautionLines(
  results: readonly PointResult[],
  labelOf: ((result: PointResult) => string) | undefined,
): readonly Line[] {
  const [worst] = results.toSorted((a, b) => largestPowerAt(b) - largestPowerAt(a));
  if (worst === undefined) return [];
  const { sheet } = worst;
  const lines = concerning(sheet, cautionsAt(worst)).map((caution) =>
    cautionLine(caution, (id) => inputLabel(sheet, id)),
  );
  return labelOf === undefined || lines.length === 0
    ? lines
    : [line('caution', strings.cautionAt, { foreign: labelOf(worst) }), ...lines];
}
