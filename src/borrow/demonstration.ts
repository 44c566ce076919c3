import { CLUB_READINGS } from '../sheet/borrowed.ts';
import { type BorrowEntries, type BorrowKind, blankEntries } from './entries.ts';

/** Names of the prepared calibrations; all of them invented. */
export const DEMONSTRATIONS = ['oneLevel', 'line', 'dc', 'swap'] as const;
export type Demonstration = (typeof DEMONSTRATIONS)[number];

/** Club and kind of what all prepared calibrations have in common. */
const club = (kind: BorrowKind): BorrowEntries => ({
  ...blankEntries(kind),
  date: '2026-05-09',
  conditions: '3.58 MHz, 22 °C, indoors',
});

const detector = (): BorrowEntries => ({
  ...club('alternation'),
  own: 'Our power meter',
  lender: 'Power meter of the neighbouring club',
  amount: '0.20',
  resolution: '0.05',
  temperature: '0.1',
  mismatch: '0.1',
  claimed: '1',
  later: '7.90',
  laterTemperature: '0.1',
  laterMismatch: '0.1',
});

/** Five rounds at one level: reference 7.35 dBm, own 8.10 dBm, scatter 0.06 dB, at most 0.1 dB of drift to either side. */
const ONE_LEVEL = [
  '7.45; 8.04; 7.25',
  '7.30; 8.02; 7.36',
  '7.36; 8.14; 7.30',
  '7.31; 8.17; 7.41',
  '7.40; 8.13; 7.36',
].join('\n');

/** A prepared calibration, as it would have been typed. */
export function demonstrationEntries(name: Demonstration): BorrowEntries {
  switch (name) {
    case 'oneLevel':
      return { ...detector(), places: [{ id: 'place1', at: '', readings: ONE_LEVEL }] };
    case 'line':
      return {
        ...detector(),
        later: '5.20',
        places: CLUB_READINGS.map((readings, index) => ({
          id: `place${index + 1}`,
          at: '',
          readings: readings.join('\n'),
        })),
      };
    case 'dc':
      return {
        ...club('dc'),
        conditions: '22 °C, indoors',
        part: '10 dB pad',
        voltsIn: '3.000 V',
        voltsOut: '0.948 V',
        percent: '0.5',
        step: '1 mV',
        loadPercent: '1',
        rated: '0.25 W',
      };
    case 'swap':
      return {
        ...club('swap'),
        part: '20 dB pad',
        without: '-13.41\n-13.38\n-13.43\n-13.40',
        with: '-33.32\n-33.27\n-33.30\n-33.31',
        straightness: '0.1',
        sourceSwr: '1.2',
        receiverSwr: '1.3',
        partSwr: '1.1',
      };
  }
}
