import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blankInstrument } from '../../src/instruments/blank.ts';
import { INSTRUMENT_KINDS, type InstrumentEntries } from '../../src/instruments/instrument.ts';
import { instrumentStore } from '../../src/instruments/kept.ts';
import { readEntries } from '../../src/instruments/read-kept.ts';
import { freshDatabase } from '../store/fresh-database.ts';

const CHOSEN = ['kind', 'basis', 'unit', 'percentOf', 'form', 'reads', 'source', 'by'];

/** An instrument with any texts in its fields. */
const anyInstrument = fc
  .tuple(fc.constantFrom(...INSTRUMENT_KINDS), fc.array(fc.string({ maxLength: 30 }), { minLength: 40 }))
  .map(([kind, texts]) => {
    const filled = Object.entries(blankInstrument(kind)).map(([key, text], index) => [
      key,
      CHOSEN.includes(key) ? text : (texts[index] ?? text),
    ]);
    return Object.fromEntries(filled) as unknown as InstrumentEntries;
  });

describe('an instrument that was kept', () => {
  it('comes back letter by letter, right or wrong', () => {
    fc.assert(
      fc.property(anyInstrument, (entries) => {
        expect(readEntries(JSON.parse(JSON.stringify(entries)))).toEqual(entries);
      }),
    );
  });

  it('goes through the browser’s database and back', async () => {
    freshDatabase();
    const store = instrumentStore(() => '2026-05-09T10:00:00.000Z');
    const value = { ...blankInstrument('pad'), label: 'Pad A', loss: '20 dB' };
    const put = await store.put({ id: 'a', name: 'Pad A', value, revision: undefined });
    expect(put).toMatchObject({ ok: true, value: { id: 'a', value } });
    expect(await store.list()).toMatchObject({ ok: true, value: { items: [{ name: 'Pad A', value }] } });
    store.close();
  });

  it('has what a blank one has where an older page kept less, and nothing that is none of it', () => {
    const read = readEntries({ kind: 'load', label: 'Load 1', colour: 'red' });
    expect(read).toEqual({ ...blankInstrument('load'), label: 'Load 1' });
  });

  it('has the blank choice where a choice is unknown', () => {
    expect(readEntries({ kind: 'pad', unit: 'furlong', basis: 'calibration' })).toMatchObject({
      unit: 'dB',
      basis: 'calibration',
    });
  });

  it.each([
    null,
    undefined,
    'pad',
    7,
    [],
    {},
    { kind: 'spoon' },
    { kind: 'pad', label: 7 },
    { kind: 'pad', label: 'x'.repeat(4001) },
  ])('is none if it is %j', (value) => {
    expect(readEntries(value)).toBeUndefined();
  });

  it('is none or a whole one, whatever lies there, and nothing throws', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const read = readEntries(value);
        if (read !== undefined) expect(Object.keys(read)).toEqual(Object.keys(blankInstrument(read.kind)));
      }),
    );
  });
});
