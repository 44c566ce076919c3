import { dayIn } from '../../instruments/day.ts';
import {
  type LoggedChange,
  type PointEntries,
  type RecordEntries,
  RULE,
  type SheetEntries,
} from '../../sheet/entries.ts';
import { isolated } from '../../text/isolate.ts';
import { baseOf, type Style } from '../../text/style.ts';
import { timeText } from '../../text/time-text.ts';
import { ageWords } from '../instruments/age-words.ts';
import { recordStrings as strings } from './record-strings.ts';

/** A line of the record: what it is about, and what it says. */
export interface RecordLine {
  readonly key: string;
  readonly label: string;
  readonly text: string;
}

/** The record's fields in the order in which they are read. */
export const RECORD_KEYS = [
  'by',
  'date',
  'instruments',
  'certificates',
  'supply',
  'temperature',
  'remarks',
] as const satisfies readonly (keyof RecordEntries)[];

/** Who, when, with what: the fields that say something, each on one line. */
export const noteLines = (entries: RecordEntries): readonly RecordLine[] =>
  RECORD_KEYS.flatMap((key) => {
    const text = oneLine(entries[key]);
    return text === '' ? [] : [{ key, label: strings.labels[key], text }];
  });

/** When the instruments were calibrated that links were taken from, and which of it was too old on the day of the measurement. */
export const calibrationLines = ({
  date,
  links,
}: Pick<SheetEntries, 'date' | 'links'>): readonly RecordLine[] =>
  links.flatMap(({ id, label, part, calibrated, interval }) => {
    if (part === 'drift' || calibrated.trim() === '') return [];
    const on = dayIn(date);
    const text = on && ageWords({ calibrated, interval }, on)?.text;
    return [
      {
        key: `calibrated-${id}`,
        label: isolated(oneLine(label)),
        text: text ?? strings.calibrated(calibrated),
      },
    ];
  });

/** Since when specification and rule are locked, and every change after that with its reason, or that none was given. */
export function agreementLines(
  style: Style,
  { log, points }: Pick<SheetEntries, 'log' | 'points'>,
): readonly RecordLine[] {
  if (log.lockedAt === '') return [{ key: 'agreed', label: strings.agreed, text: strings.notLocked }];
  const text = [
    strings.lockedAt(timeText(log.lockedAt)),
    ...(log.changes.length === 0 ? [strings.unchanged] : []),
    ...openPoints(log, points),
  ].join('; ');
  return [
    { key: 'agreed', label: strings.agreed, text },
    ...log.changes.map((change, index) => changeLine(style, change, points, index)),
  ];
}

/** Everything that a record has beside the numbers: notes, days of calibration, then the log of what was agreed. */
export const recordLines = (
  style: Style,
  entries: RecordEntries & Pick<SheetEntries, 'log' | 'points' | 'links'>,
): readonly RecordLine[] => [
  ...noteLines(entries),
  ...calibrationLines(entries),
  ...agreementLines(style, entries),
];

/** Names of more points than this are not listed. */
const MOST_NAMED = 3;

/** Points at which nothing has been read, so that what is demanded there may still be agreed on. */
function openPoints({ read }: SheetEntries['log'], points: SheetEntries['points']): readonly string[] {
  if (read === undefined) return [];
  const open = points.flatMap((point, index) => (read.includes(point.id) ? [] : [pointName(point, index)]));
  if (open.length === 0) return [];
  const rest = open.length - MOST_NAMED;
  const named = [...open.slice(0, MOST_NAMED), ...(rest > 0 ? [strings.andMore(rest)] : [])];
  return [strings.openPoints(named.join(', '))];
}

const pointName = ({ label }: PointEntries, index: number): string =>
  isolated(oneLine(label)) || strings.unnamedPoint(index + 1);

function changeLine(
  style: Style,
  { at, what, from, to, reason }: LoggedChange,
  points: SheetEntries['points'],
  index: number,
): RecordLine {
  const given = oneLine(reason);
  return {
    key: `change${index}`,
    label: strings.changed(timeText(at)),
    text: strings.change({
      what: whatText(what, points),
      from: quotedText(style, from),
      to: quotedText(style, to),
      reason: given === '' ? strings.noReason : strings.reason(isolated(given)),
    }),
  };
}

/** What was changed, in words: the rule, or whose specification. */
function whatText(what: string, points: SheetEntries['points']): string {
  if (what === RULE) return strings.rule;
  const position = points.findIndex(({ id }) => id === what);
  const point = points[position];
  if (point === undefined) return strings.goneSpecification;
  if (points.length === 1) return strings.specification;
  return strings.specificationOf(pointName(point, position));
}

function quotedText(style: Style, text: string): string {
  const plain = oneLine(text);
  if (plain === '') return strings.emptyText;
  return baseOf(style) === 'shown' || baseOf(style) === 'unicode' ? `“${isolated(plain)}”` : `"${plain}"`;
}

/** Lines of a text as one, set apart by semicolons. */
const oneLine = (text: string): string =>
  text
    .split(/\s*[\r\n]+\s*/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join('; ');
