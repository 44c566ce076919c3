import fc from 'fast-check';
import { cleanLines } from '../../../src/address/text-code.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { INSTRUMENT_KINDS, type InstrumentEntries } from '../../../src/instruments/instrument.ts';
import { CHOICES, readEntries } from '../../../src/instruments/read-kept.ts';
import { cleanText } from '../../../src/text/clean.ts';
import { anyText } from '../../text/any-text.ts';

const choices = new Map<string, readonly string[]>(Object.entries(CHOICES));

/** What may stand in a field: a choice of its own, or a text as a file keeps it. */
function anyValue(key: string): fc.Arbitrary<string> {
  const offered = choices.get(key);
  if (offered !== undefined) return fc.constantFrom(...offered);
  const clean = key === 'table' || key === 'notes' ? cleanLines : cleanText;
  return fc
    .oneof(fc.constantFrom('', '0', '20 dB', '2026-05-09', '3,5\t0,12\t0,1\n28\t0,3\t0,1'), anyText(100))
    .map((text) => clean(clean(text).slice(0, 100)));
}

/** Any instrument, whether it can be used or not. */
export const anyInstrument: fc.Arbitrary<InstrumentEntries> = fc
  .constantFrom(...INSTRUMENT_KINDS)
  .chain((kind) => {
    const blank = blankInstrument(kind);
    const values = Object.keys(blank).map((key) => [key, anyValue(key)] as const);
    return fc.record(Object.fromEntries(values), { noNullPrototype: true }).map((typed) => {
      const entries = readEntries(typed);
      if (entries === undefined) throw new Error('anyInstrument: wish an instrument');
      return entries;
    });
  });

/** An id as this site gives it. */
export const anyId = fc.stringMatching(/^[0-9a-f]{24}$/);
