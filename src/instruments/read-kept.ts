import { blankInstrument } from './blank.ts';
import {
  BASES,
  CALIBRATED_FROM,
  CORRECTED_BY,
  INSTRUMENT_KINDS,
  INSTRUMENT_UNITS,
  type InstrumentEntries,
  SHEET_FORMS,
  TERM_READINGS,
} from './instrument.ts';

/** What may stand where one of several is chosen. */
export const CHOICES = {
  kind: INSTRUMENT_KINDS,
  basis: BASES,
  unit: INSTRUMENT_UNITS,
  percentOf: ['reading', 'trueValue'],
  form: SHEET_FORMS,
  reads: TERM_READINGS,
  source: CALIBRATED_FROM,
  by: CORRECTED_BY,
} as const satisfies Partial<Record<keyof InstrumentEntries, readonly string[]>>;

/** More characters than this nobody types into a field; what is longer is no instrument of ours. */
export const LONGEST_KEPT = 4000;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** One of several, or what a blank instrument has. */
const choiceOf = (key: string, value: unknown, blank: string): string => {
  const choices: readonly string[] = Object.entries(CHOICES).find(([name]) => name === key)?.[1] ?? [];
  return choices.find((choice) => choice === value) ?? blank;
};

/**
 * An instrument as it was kept or came in a file, with what a blank one has where something is missing; undefined where it is nothing of
 * the kind: no record, no kind, or a text that is none.
 */
export function readEntries(value: unknown): InstrumentEntries | undefined {
  if (!isRecord(value)) return undefined;
  const kind = INSTRUMENT_KINDS.find((each) => each === value.kind);
  if (kind === undefined) return undefined;
  const blank = blankInstrument(kind);
  const texts = Object.entries(blank).map(([key, text]): [string, unknown] => {
    const found = Object.hasOwn(value, key) ? value[key] : undefined;
    return [key, found === undefined ? text : key in CHOICES ? choiceOf(key, found, text) : found];
  });
  const right = texts.every(([, text]) => typeof text === 'string' && text.length <= LONGEST_KEPT);
  // every key is one of a blank instrument, and every choice one of its own; Object.fromEntries forgets that
  return right ? (Object.fromEntries(texts) as unknown as InstrumentEntries) : undefined;
}
