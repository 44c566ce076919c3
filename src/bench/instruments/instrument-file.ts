import type { Fields, ScalarSpec, TextSpec } from '../../address/field-spec.ts';
import type { FileForm } from '../../exchange/file-form.ts';
import { readFile } from '../../exchange/read-file.ts';
import { type FileWritten, writeFile } from '../../exchange/write-file.ts';
import { blankInstrument } from '../../instruments/blank.ts';
import type { InstrumentEntries } from '../../instruments/instrument.ts';
import { CHOICES, LONGEST_KEPT, readEntries } from '../../instruments/read-kept.ts';
import { LONGEST_TEXT } from '../read/spec.ts';
import { shelfFileStrings as words } from './shelf-file-strings.ts';
import { instrumentStrings as strings } from './strings.ts';
import type { Known } from './take.ts';

/** Texts with several lines, and those that other pages write at length. */
const LINES: readonly string[] = ['table', 'notes'];
const LONG: readonly string[] = [...LINES, 'from'];

const textField = (key: string, label: string, text: Partial<TextSpec> = {}): TextSpec => ({
  type: 'text',
  key,
  label,
  maxLength: LONGEST_TEXT,
  default: '',
  ...text,
});

function fieldOf(key: keyof InstrumentEntries, usual: string): ScalarSpec {
  const label = strings.labels[key];
  const choices: readonly string[] | undefined = Object.entries(CHOICES).find(([name]) => name === key)?.[1];
  if (choices !== undefined)
    return {
      type: 'choice',
      key,
      label,
      choices: Object.fromEntries(choices.map((choice) => [choice, choice])),
      default: usual,
    };
  return textField(key, label, {
    default: usual,
    ...(LONG.includes(key) && { maxLength: LONGEST_KEPT }),
    ...(LINES.includes(key) && { lines: true }),
  });
}

/** What is in a file of one instrument: what stands in its form, and the id by which sheets know it. */
function instrumentFields(): Fields {
  const { kind, label, serial, ...rest } = blankInstrument('meter');
  const usual = { kind, label, serial, ...rest } satisfies InstrumentEntries;
  // the keys of an instrument and nothing else; Object.entries forgets that
  const entries = Object.entries(usual) as [keyof InstrumentEntries, string][];
  return {
    id: textField('id', words.id),
    ...Object.fromEntries(entries.map(([key, text]) => [key, fieldOf(key, text)])),
  };
}

/** Files of instruments. */
export const instrumentFileForm = () =>
  ({
    version: 1,
    lists: { instruments: instrumentFields() },
    elsewhere: { sheets: words.holdsSheets },
  }) as const satisfies FileForm;

/** Instruments as typed, as the text of a file. */
export const instrumentsAsFile = (instruments: readonly Known[], saved: string): FileWritten =>
  writeFile(
    instrumentFileForm(),
    { instruments: instruments.map(({ id, value }) => ({ ...value, id })) },
    saved,
  );

/** The instruments of a file, or the first thing that is wrong with it. An id may be empty, or anything. */
export type InstrumentsRead =
  | { readonly ok: true; readonly instruments: readonly Known[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problem: string };

/** Reads a file of instruments. Never throws, whatever it is. */
export function instrumentsInFile(bytes: Uint8Array): InstrumentsRead {
  const read = readFile(instrumentFileForm(), bytes);
  if (!read.ok) return read;
  const instruments = read.held.instruments.flatMap(({ id, ...typed }): readonly Known[] => {
    const value = readEntries(typed);
    return value === undefined ? [] : [{ id: typeof id === 'string' ? id : '', value }];
  });
  return { ok: true, instruments, notes: read.notes };
}
