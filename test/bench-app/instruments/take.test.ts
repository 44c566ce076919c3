import { describe, expect, it } from 'vitest';
import { type Known, taken, whyNot } from '../../../src/bench/instruments/take.ts';
import { readMeasurement } from '../../../src/bench/read/read-measurement.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { readDay } from '../../../src/instruments/day.ts';
import type { InstrumentEntries } from '../../../src/instruments/instrument.ts';
import { blankLink, type LinkEntries, type SheetEntries } from '../../../src/sheet/entries.ts';
import { firstNumber, type Typing, typedEntries } from '../typed-sheet.ts';

const on = readDay('2027-05-09');
if (on === undefined) throw new Error('wish a day');

const padA: InstrumentEntries = {
  ...blankInstrument('pad'),
  label: 'Pad A',
  loss: '20',
  rated: '1 W',
  basis: 'calibration',
  source: 'borrowed',
  correction: '0.12',
  uncertainty: '0.1',
  drift: '0.02',
  calibrated: '2026-05-09',
  interval: '12',
};
const known = (value: InstrumentEntries, id = 'a'): Known => ({ id, value });
const sheet = (typing: Typing = {}): SheetEntries =>
  typedEntries({
    points: [{ readings: '7 dBm', frequency: '3.58' }],
    links: [
      { label: 'Meter', cause: 'shared' },
      { label: 'Pad', loss: '19' },
    ],
    ...typing,
  });
const take = (entries: SheetEntries, value: InstrumentEntries, linkId = 'link2', id = 'a'): SheetEntries => {
  const change = taken(entries, { linkId, known: known(value, id), on });
  if (change === undefined) throw new Error('wish a link that takes it');
  return { ...entries, ...change };
};
const labels = ({ links }: SheetEntries) => links.map(({ label }) => label);

describe('a link that takes an instrument', () => {
  it('has its statement, and its correction within the loss', () => {
    const [, pad] = take(sheet(), padA).links;
    expect(pad).toMatchObject({
      id: 'link2',
      label: 'Pad A',
      kind: 'pad',
      loss: '20.12',
      form: 'expanded',
      amount: '0.1',
      factor: '2',
      rated: '1 W',
      source: 'borrowed',
    });
  });

  it('says from which instrument, when that was calibrated, and for how long that stands', () => {
    const [, pad] = take(sheet(), padA).links;
    expect(pad).toMatchObject({
      instrument: 'a',
      part: 'statement',
      calibrated: '2026-05-09',
      interval: '12',
    });
  });

  it('takes neither the number of the piece nor the notes along', () => {
    const value = { ...padA, serial: 'X-4711', notes: 'found in the attic', from: 'a friend' };
    expect(JSON.stringify(take(sheet(), value))).not.toMatch(/4711|attic|friend/);
  });

  it('is followed by its drift since then, as limits with a link of their own', () => {
    const entries = take(sheet(), { ...padA, drift: '0.03' });
    expect(labels(entries)).toEqual(['Meter', 'Pad A', 'Pad A: drift since its calibration']);
    // one year of at most 0.03 dB
    expect(entries.links[2]).toMatchObject({ form: 'rectangular', amount: '0.03', loss: '0', part: 'drift' });
    expect(new Set(entries.links.map(({ id }) => id)).size).toBe(3);
  });

  it('keeps what the sheet says of it: a shared cause, a what-if', () => {
    const [meter] = take(sheet(), { ...padA, kind: 'meter', drift: '' }, 'link1').links;
    expect(meter).toMatchObject({ id: 'link1', cause: 'shared', loss: '0.12' });
    const off = sheet({ links: [{}, { off: true, better: '0.1' }] });
    expect(take(off, padA).links.map((link) => link.off)).toEqual([false, true, true]);
    expect(take(off, padA).links[1]?.better).toBe('0.1');
  });

  it('gives the level that the numbers say: 7 dBm behind 20.12 dB, u from U / 2 and a drift of 0.02 dB', () => {
    const entries = take(sheet({ links: [{ label: 'Meter', amount: '0' }, {}] }), padA);
    const { links, points } = entries;
    const { result } = firstNumber({ links, points });
    expect(result.chain.result.estimate).toBeCloseTo(27.12, 10);
    const expected = Math.hypot(0.1 / 2, 0.02 / Math.sqrt(3));
    expect(result.chain.result.propagation.standardUncertainty).toBeCloseTo(expected, 6);
  });

  it('takes a table as it stands', () => {
    const table = '1 MHz; 0.1; 0.1\n30 MHz; 0.2; 0.1';
    const entries = take(sheet(), { ...padA, by: 'frequency', table, drift: '' });
    expect(entries.links[1]).toMatchObject({ form: 'corrections', by: 'frequency', table, loss: '20' });
    expect(readMeasurement(entries).problems).toEqual([]);
  });

  it('counts the years since the calibration where a data sheet limits drift as a term', () => {
    const value: InstrumentEntries = {
      ...blankInstrument('meter'),
      label: 'Voltmeter',
      form: 'terms',
      reads: 'dcVolts',
      ofReading: '0.5',
      perYear: '0.1',
      calibrated: '2025-05-09',
    };
    const detector = typedEntries({ method: 'peakDetector', links: [{ unit: 'volts' }] });
    expect(take(detector, value, 'link1').links[0]).toMatchObject({
      form: 'terms',
      perYear: '0.1',
      years: '2',
    });
  });

  it('brings the resistance of a load to the sheet', () => {
    const load = { ...blankInstrument('load'), label: 'Load', resistance: '49.8', amount: '1' };
    const scope = typedEntries({ method: 'oscilloscope', links: [{ unit: 'percentOfResistance' }] });
    const entries = take(scope, load, 'link1');
    expect(entries).toMatchObject({ load: '49.8', links: [{ unit: 'percentOfResistance', amount: '1' }] });
  });
});

describe('another instrument in place of one', () => {
  const padB = { ...padA, label: 'Pad B', drift: '' };

  it('takes its drift away with it', () => {
    expect(labels(take(take(sheet(), padA), padB, 'link2', 'b'))).toEqual(['Meter', 'Pad B']);
  });

  it('leaves drift where the first one is still in the chain', () => {
    const twice = take(take(sheet(), padA), padA, 'link1');
    expect(labels(twice).filter((label) => label.includes('drift'))).toHaveLength(1);
    expect(labels(take(twice, padB, 'link1', 'b'))).toContain('Pad A: drift since its calibration');
  });

  it('taken once more brings its new statement and no second drift', () => {
    const again = take(take(sheet(), padA), { ...padA, uncertainty: '0.08', drift: '0.05' });
    expect(labels(again)).toEqual(['Meter', 'Pad A', 'Pad A: drift since its calibration']);
    expect(again.links.map(({ amount }) => amount)).toEqual(['0.5', '0.08', '0.05']);
  });
});

describe('a sheet does not take', () => {
  const link: LinkEntries = blankLink('link1');

  it('an instrument whose form is not finished', () => {
    expect(whyNot({ ...padA, uncertainty: '' }, 'padsIntoMeter', link)).toBe('unfinished');
    expect(
      taken(sheet(), { linkId: 'link2', known: known({ ...padA, uncertainty: '' }), on }),
    ).toBeUndefined();
  });

  it('one that is stated in what its method does not read', () => {
    const volts = { ...padA, unit: 'dcVolts', correction: '0' } as const;
    expect(whyNot(volts, 'padsIntoMeter', link)).toBe('unit');
    expect(whyNot(volts, 'peakDetector', link)).toBeUndefined();
    expect(taken(sheet(), { linkId: 'link2', known: known(volts), on })).toBeUndefined();
  });

  it('anything into a link that is not there', () => {
    expect(taken(sheet(), { linkId: 'nobody', known: known(padA), on })).toBeUndefined();
  });
});

describe('drift before the calibration', () => {
  it('is none: a day of use before it is told elsewhere, and makes nothing narrower', () => {
    const early = readDay('2020-01-01');
    if (early === undefined) throw new Error('wish a day');
    const change = taken(sheet(), { linkId: 'link2', known: known(padA), on: early });
    expect(change?.links[2]?.amount).toBe('0');
  });
});
