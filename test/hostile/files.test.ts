import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { sheetsAsFile, sheetsInFile } from '../../src/bench/export/sheet-file.ts';
import { instrumentsAsFile, instrumentsInFile } from '../../src/bench/instruments/instrument-file.ts';
import { readInstrument } from '../../src/bench/instruments/read-instrument.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import type { FileWritten } from '../../src/exchange/write-file.ts';
import { clubInstruments } from '../../src/instruments/club.ts';
import { damagedFile } from './any-damage.ts';
import { expectClean, expectTold } from './clean.ts';

const SAVED = '2026-05-09T10:00:00.000Z';
/** Files tried of either kind. */
const TRIED = 500;

function contentOf(written: FileWritten): unknown {
  if (!written.ok) throw new Error(written.problem);
  return JSON.parse(written.text);
}

const sheets = contentOf(sheetsAsFile([demonstrationEntries(), demonstrationEntries()], SAVED));
const instruments = contentOf(
  instrumentsAsFile(
    clubInstruments().map((value, index) => ({ id: `${index}`.padStart(24, '0'), value })),
    SAVED,
  ),
);

test('a hurt file of sheets gives sheets of text alone, or a sentence; what it gives is read and written again', () => {
  let taken = 0;
  fc.assert(
    fc.property(damagedFile(sheets), (bytes) => {
      const read = sheetsInFile(bytes);
      if (!read.ok) return expectTold([read.problem]);
      taken += 1;
      expectClean(read.sheets);
      expectTold(read.notes);
      for (const entries of read.sheets)
        expectTold(readMeasurement(entries).problems.map((one) => one.problem));
      expect(
        sheetsInFile(new TextEncoder().encode(JSON.stringify(contentOf(sheetsAsFile(read.sheets, SAVED))))),
      ).toEqual({
        ...read,
        notes: [],
      });
    }),
    { numRuns: TRIED },
  );
  // both ways are gone
  expect(taken).toBeGreaterThan(TRIED / 10);
  expect(taken).toBeLessThan(TRIED);
});

test('a hurt file of instruments gives instruments of text alone, or a sentence', () => {
  let taken = 0;
  fc.assert(
    fc.property(damagedFile(instruments), (bytes) => {
      const read = instrumentsInFile(bytes);
      if (!read.ok) return expectTold([read.problem]);
      taken += 1;
      expectClean(read.instruments);
      expectTold(read.notes);
      for (const { value } of read.instruments) readInstrument(value);
    }),
    { numRuns: TRIED },
  );
  expect(taken).toBeGreaterThan(TRIED / 10);
  expect(taken).toBeLessThan(TRIED);
});
