import type { FileForm } from '../../exchange/file-form.ts';
import { type FileRead, readFile } from '../../exchange/read-file.ts';
import { type FileWritten, writeFile } from '../../exchange/write-file.ts';
import type { SheetEntries } from '../../sheet/entries.ts';
import { sheetAddressSpec } from '../address/address-spec.ts';
import { carriedOf, entriesIn } from '../address/carried.ts';
import { filesStrings } from './files-strings.ts';

/** Files of sheets: the fields are those of an address, under their full names. */
export const sheetFileForm = () =>
  ({
    version: 1,
    lists: { sheets: sheetAddressSpec().fields },
    elsewhere: { instruments: filesStrings.holdsInstruments, practice: filesStrings.holdsPractice },
  }) as const satisfies FileForm;

type Lists = ReturnType<typeof sheetFileForm>['lists'];

/** Sheets as typed, as the text of a file. */
export const sheetsAsFile = (sheets: readonly SheetEntries[], saved: string): FileWritten =>
  writeFile(sheetFileForm(), { sheets: sheets.map(carriedOf) }, saved);

/** The sheets of a file, or the first thing that is wrong with it. */
export type SheetsRead =
  | { readonly ok: true; readonly sheets: readonly SheetEntries[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problem: string };

/** Reads a file of sheets. Never throws, whatever it is. */
export function sheetsInFile(bytes: Uint8Array): SheetsRead {
  const read: FileRead<Lists> = readFile(sheetFileForm(), bytes);
  if (!read.ok) return read;
  return { ok: true, sheets: read.held.sheets.map(entriesIn), notes: read.notes };
}
