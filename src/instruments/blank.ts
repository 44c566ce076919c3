import { BLANK_TERMS } from '../sheet/link-entries.ts';
import type { CalibrationEntries, InstrumentEntries, InstrumentKind } from './instrument.ts';

/** A calibration that nobody has said anything about yet. */
export const blankCalibration = (): CalibrationEntries => ({
  source: 'certificate',
  from: '',
  by: 'nothing',
  correction: '0',
  uncertainty: '',
  table: '',
  factor: '2',
  freedom: '',
  calibrated: '',
});

/** An instrument that nobody has said anything about yet. */
export const blankInstrument = (kind: InstrumentKind): InstrumentEntries => ({
  ...blankCalibration(),
  kind,
  label: '',
  serial: '',
  loss: kind === 'meter' || kind === 'load' || kind === 'other' ? '0' : '',
  resistance: kind === 'load' ? '50' : '',
  rated: '',
  basis: 'dataSheet',
  unit: kind === 'load' ? 'percentOfResistance' : 'dB',
  percentOf: 'reading',
  form: 'rectangular',
  amount: '',
  lower: '',
  upper: '',
  reads: 'power',
  ...BLANK_TERMS,
  drift: '',
  interval: '',
  notes: '',
});

/** The instrument after a calibration: that counts from now on, in place of its data sheet or of the calibration before. */
export const withCalibration = (
  entries: InstrumentEntries,
  calibration: CalibrationEntries & Pick<InstrumentEntries, 'unit'>,
): InstrumentEntries => ({ ...entries, ...calibration, basis: 'calibration' });
