import { certificate } from '../sheet/own-meter.ts';
import { blankInstrument } from './blank.ts';
import type { InstrumentEntries } from './instrument.ts';

/** A meter that the club had calibrated: its certificate is the one of the lesson on calibration. */
const ownMeter = (): InstrumentEntries => ({
  ...blankInstrument('meter'),
  label: 'The club’s power meter',
  serial: 'no. 1',
  basis: 'calibration',
  from: 'calibration laboratory, certificate 26-014 (invented)',
  by: 'level',
  table: certificate()
    .map(({ at, correction, expanded }) => `${at} dBm; ${correction}; ${expanded}`)
    .join('\n'),
  drift: '0.1',
  calibrated: '2026-03-02',
  interval: '12',
  notes: 'Invented for the demonstration.',
});

const lentMeter = (): InstrumentEntries => ({
  ...blankInstrument('meter'),
  label: 'The meter that was lent',
  serial: 'no. 3 of the neighbouring club',
  amount: '0.25',
  notes: 'Invented for the demonstration. Its owner has the data sheet.',
});

const oscilloscope = (): InstrumentEntries => ({
  ...blankInstrument('meter'),
  label: 'Bench oscilloscope, gain',
  serial: 'channel 1',
  unit: 'percentOfVolts',
  amount: '3',
  calibrated: '2024-01-20',
  interval: '24',
  notes: 'Invented for the demonstration; older than its interval on purpose.',
});

const multimeter = (): InstrumentEntries => ({
  ...blankInstrument('meter'),
  label: 'Multimeter, DC volts',
  form: 'terms',
  reads: 'dcVolts',
  ofReading: '0.5',
  digits: '2',
  step: '0.01',
  notes: 'Invented for the demonstration.',
});

const pad = (): InstrumentEntries => ({
  ...blankInstrument('pad'),
  label: 'Pad A, 20 dB',
  serial: 'A',
  loss: '20',
  rated: '1 W',
  amount: '0.5',
  basis: 'calibration',
  source: 'measured',
  from: 'at DC with the club’s multimeter (invented)',
  correction: '0.07',
  uncertainty: '0.1',
  drift: '0.02',
  calibrated: '2026-04-18',
  interval: '24',
  notes: 'Invented for the demonstration.',
});

const coax = (): InstrumentEntries => ({
  ...blankInstrument('cable'),
  label: '3 m of thin coax',
  serial: '7',
  loss: '0.1',
  amount: '0.05',
  notes: 'Invented for the demonstration.',
});

const load = (): InstrumentEntries => ({
  ...blankInstrument('load'),
  label: 'Dummy load',
  resistance: '49.8',
  rated: '5 W',
  basis: 'calibration',
  source: 'measured',
  from: 'with the club’s multimeter (invented)',
  uncertainty: '1',
  calibrated: '2026-04-18',
  interval: '24',
  notes: 'Invented for the demonstration.',
});

/** What the club of the demonstration has on its shelf. Every value is invented. */
export const clubInstruments = (): readonly InstrumentEntries[] => [
  ownMeter(),
  lentMeter(),
  oscilloscope(),
  multimeter(),
  pad(),
  coax(),
  load(),
];
