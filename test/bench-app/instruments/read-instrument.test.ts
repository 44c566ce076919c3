import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asLink } from '../../../src/bench/instruments/as-link.ts';
import { fieldPath, readInstrument } from '../../../src/bench/instruments/read-instrument.ts';
import { linkUnit, methodsFor, typedUnit } from '../../../src/bench/instruments/units.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { clubInstruments } from '../../../src/instruments/club.ts';
import {
  BASES,
  CORRECTED_BY,
  INSTRUMENT_KINDS,
  INSTRUMENT_UNITS,
  type InstrumentEntries,
  SHEET_FORMS,
  TERM_READINGS,
} from '../../../src/instruments/instrument.ts';
import { UNITS_OF } from '../../../src/sheet/method.ts';
import { anyText } from '../any-entries.ts';

const limits: InstrumentEntries = { ...blankInstrument('meter'), label: 'Meter', amount: '0.5' };
const calibrated: InstrumentEntries = {
  ...limits,
  basis: 'calibration',
  correction: '0.12',
  uncertainty: '0.1',
  calibrated: '2026-05-09',
};
const problemsOf = (entries: InstrumentEntries) =>
  readInstrument(entries).problems.map(({ path, problem }) => [path, problem]);
/** The one field that is wrong, and the sentence beside it. */
const sole = (entries: InstrumentEntries, change: Partial<InstrumentEntries>) => {
  const problems = problemsOf({ ...entries, ...change });
  expect(problems).toHaveLength(1);
  return problems[0];
};

const CODES = {
  kind: fc.constantFrom(...INSTRUMENT_KINDS),
  basis: fc.constantFrom(...BASES),
  unit: fc.constantFrom(...INSTRUMENT_UNITS),
  form: fc.constantFrom(...SHEET_FORMS),
  reads: fc.constantFrom(...TERM_READINGS),
  by: fc.constantFrom(...CORRECTED_BY),
};
const anyInstrument = fc
  .tuple(fc.record(CODES), fc.array(anyText, { minLength: 40, maxLength: 40 }))
  .map(([codes, texts]) => {
    const filled = Object.entries(blankInstrument(codes.kind)).map(([key, text], index) => [
      key,
      ['percentOf', 'source'].includes(key) ? text : (texts[index] ?? text),
    ]);
    return { ...Object.fromEntries(filled), ...codes } as InstrumentEntries;
  });

describe('laws of an instrument as typed', () => {
  it('whatever was typed, it is read, or every problem names a field of it', () => {
    fc.assert(
      fc.property(anyInstrument, (entries) => {
        const { instrument, problems } = readInstrument(entries);
        expect(instrument === undefined).toBe(problems.length > 0);
        const paths = Object.keys(entries).map((key) => fieldPath(key as keyof InstrumentEntries));
        for (const { path, label, problem } of problems) {
          expect(paths).toContain(path);
          expect(label).not.toBe('');
          expect(problem).toMatch(/[.”]$/);
        }
      }),
    );
  });

  it('what does not count is not read: the data sheet beside a calibration, a calibration beside a data sheet', () => {
    fc.assert(
      fc.property(anyText, anyText, (one, other) => {
        const sheet = { ...limits, uncertainty: one, correction: other, table: one, factor: other };
        expect(problemsOf(sheet)).toEqual([]);
        expect(problemsOf({ ...calibrated, amount: one, lower: other, upper: one })).toEqual([]);
      }),
    );
  });
});

describe('an instrument that can be used', () => {
  it('states the limits of its data sheet', () => {
    expect(readInstrument({ ...limits, amount: '±0,5 dB' }).instrument).toEqual({
      lossDb: 0,
      correctionDb: 0,
      stated: { form: 'limits', shape: 'rectangular', halfWidth: 0.5 },
      driftPerYear: undefined,
    });
  });

  it('states what its calibration found, with its drift', () => {
    expect(readInstrument({ ...calibrated, kind: 'pad', loss: '20', drift: '0.02' }).instrument).toEqual({
      lossDb: 20,
      correctionDb: 0.12,
      stated: { form: 'expanded', expanded: 0.1, coverageFactor: 2 },
      driftPerYear: 0.02,
    });
  });

  it('states a table by frequency in hertz', () => {
    const read = readInstrument({ ...calibrated, by: 'frequency', table: '1 MHz 0.1 0.1\n30 MHz 0.2 0.1' });
    expect(read.instrument).toMatchObject({
      correctionDb: 0,
      stated: { points: [{ at: 1e6 }, { at: 30e6 }] },
    });
  });

  it('has a correction in percent as decibels: +5 % of volts is 20 lg 1.05 = 0.424 dB', () => {
    const { instrument } = readInstrument({ ...calibrated, unit: 'percentOfVolts', correction: '5' });
    expect(instrument?.correctionDb).toBeCloseTo(0.4238, 4);
  });

  it('asks a sum of terms neither for the day’s temperature nor for the years since', () => {
    const terms = { ...limits, form: 'terms', ofReading: '0.5', perKelvin: '0.05', perYear: '0.1' } as const;
    expect(problemsOf(terms)).toEqual([]);
  });

  it('is every one of the club’s', () => {
    for (const entries of clubInstruments()) expect(problemsOf(entries), entries.label).toEqual([]);
  });
});

describe('what is wrong is told beside its field', () => {
  it('a name, limits, a loss that are missing', () => {
    expect(sole(limits, { label: ' ' })?.[0]).toBe('instrument.label');
    expect(sole(limits, { amount: '' })).toEqual([
      'instrument.amount',
      expect.stringContaining('Nothing is'),
    ]);
    expect(sole(limits, { kind: 'pad', loss: '' })?.[0]).toBe('instrument.loss');
    expect(sole({ ...limits, kind: 'load', resistance: '' }, {})?.[0]).toBe('instrument.resistance');
  });

  it('ends the wrong way round', () => {
    expect(sole(limits, { form: 'asymmetric', lower: '1', upper: '-1' })?.[0]).toBe('instrument.upper');
  });

  it('U, where a calibration has none', () => {
    expect(sole(calibrated, { uncertainty: '' })?.[0]).toBe('instrument.uncertainty');
  });

  it('a calibration without a day, and a day that no calendar has', () => {
    expect(sole(calibrated, { calibrated: '' })).toEqual([
      'instrument.calibrated',
      expect.stringContaining('2026-05-09'),
    ]);
    for (const day of ['2026-02-30', '9.5.2026', 'May'])
      expect(sole(calibrated, { calibrated: day })?.[1], day).toContain(`“${day}” is no day`);
    expect(problemsOf(limits)).toEqual([]);
    expect(sole(limits, { calibrated: 'May' })?.[0]).toBe('instrument.calibrated');
  });

  it('an interval that is no number of months, or that began on no day', () => {
    for (const interval of ['a year', '0', '-3', '1.5'])
      expect(sole(calibrated, { interval })?.[0], interval).toBe('instrument.interval');
    expect(sole(limits, { interval: '12' })?.[0]).toBe('instrument.calibrated');
  });

  it('a correction that no chain in decibels can add', () => {
    const volts = { ...calibrated, unit: 'dcVolts', uncertainty: '0.01' } as const;
    expect(sole(volts, {})).toEqual(['instrument.correction', expect.stringContaining('leave 0 here')]);
    expect(problemsOf({ ...volts, correction: '0' })).toEqual([]);
    expect(sole(volts, { by: 'level', table: '1 0 0.1\n2 0 0.1' })).toEqual([
      'instrument.unit',
      expect.stringContaining('in decibels'),
    ]);
  });

  it('a correction that leaves nothing of the power', () => {
    // both the limits of what is accepted and nothing at all are told beside the field
    const power = { ...calibrated, unit: 'percentOfPower', correction: '-100' } as const;
    expect(sole(power, {})?.[0]).toBe('instrument.correction');
  });

  it('a line of a table, with its number', () => {
    expect(sole(calibrated, { by: 'level', table: '1; 0; 0.1\n2; x; 0.1' })).toEqual([
      'instrument.table',
      expect.stringMatching(/^Line 2/),
    ]);
  });
});

describe('units', () => {
  it('each is one of some method, and is stated there in a unit that the method knows', () => {
    for (const unit of INSTRUMENT_UNITS) {
      const entries = { ...limits, unit };
      expect(methodsFor(entries).length, unit).toBeGreaterThan(0);
      for (const method of methodsFor(entries))
        expect(UNITS_OF[method]).toContain(linkUnit(entries, method, typedUnit(unit)));
    }
  });

  it('of terms is that of a reading: a method that reads something else cannot use them', () => {
    const methods = (reads: (typeof TERM_READINGS)[number]) =>
      methodsFor({ ...limits, form: 'terms', reads });
    expect(methods('power')).toEqual(['padsIntoMeter', 'inLine']);
    expect(methods('voltsPeakToPeak')).toEqual(['oscilloscope']);
    expect(methods('dcVolts')).toEqual(['peakDetector', 'dcSubstitution']);
  });

  it('of a thermometer is the link’s own: with RF or with DC', () => {
    const thermometer = { ...limits, unit: 'kelvin' } as const;
    expect(linkUnit(thermometer, 'dcSubstitution', 'kelvinDc')).toBe('kelvinDc');
    expect(linkUnit(thermometer, 'dcSubstitution', 'dB')).toBe('kelvinRf');
    expect(linkUnit(thermometer, 'oscilloscope', 'dB')).toBeUndefined();
  });
});

describe('the link that an instrument would be', () => {
  it('has no loss where no power goes through', () => {
    expect(asLink({ ...limits, loss: '20' }, { id: 'a', unit: 'dB' }).loss).toBe('0');
    expect(asLink({ ...limits, kind: 'pad', loss: '20 dB' }, { id: 'a', unit: 'dB' }).loss).toBe('20 dB');
  });

  it('says where it comes from', () => {
    expect(asLink(limits, { id: 'a', unit: 'dB' }).source).toBe('specification');
    expect(asLink({ ...calibrated, source: 'borrowed' }, { id: 'a', unit: 'dB' }).source).toBe('borrowed');
  });
});
