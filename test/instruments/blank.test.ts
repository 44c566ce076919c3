import { describe, expect, it } from 'vitest';
import { blankCalibration, blankInstrument, withCalibration } from '../../src/instruments/blank.ts';
import { INSTRUMENT_KINDS } from '../../src/instruments/instrument.ts';

describe('a blank instrument', () => {
  it.each(INSTRUMENT_KINDS)('of kind %s states nothing yet: amount, U and the day are asked for', (kind) => {
    const { amount, uncertainty, calibrated, label } = blankInstrument(kind);
    expect([amount, uncertainty, calibrated, label]).toEqual(['', '', '', '']);
  });

  it('asks for a loss only where power goes through it', () => {
    const asks = INSTRUMENT_KINDS.filter((kind) => blankInstrument(kind).loss === '');
    expect(asks).toEqual(['pad', 'cable', 'amplifier']);
  });

  it('is stated in resistance where it is a load', () => {
    expect(blankInstrument('load')).toMatchObject({ unit: 'percentOfResistance', resistance: '50' });
  });
});

describe('a new calibration', () => {
  const pad = { ...blankInstrument('pad'), label: 'Pad A', loss: '20', amount: '0.5', drift: '0.02' };
  const calibration = {
    ...blankCalibration(),
    source: 'borrowed' as const,
    from: 'lent',
    correction: '0.12',
    uncertainty: '0.1',
    calibrated: '2026-05-09',
    unit: 'dB' as const,
  };

  it('counts from now on, in place of the data sheet', () => {
    expect(withCalibration(pad, calibration)).toMatchObject({ basis: 'calibration', ...calibration });
  });

  it('loses nothing else that was typed', () => {
    const { label, loss, amount, drift } = withCalibration(pad, calibration);
    expect({ label, loss, amount, drift }).toEqual({
      label: 'Pad A',
      loss: '20',
      amount: '0.5',
      drift: '0.02',
    });
  });
});
