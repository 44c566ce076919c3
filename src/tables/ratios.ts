import { dbToAmplitudeRatio, dbToPowerRatio, gainDb } from '#compute';
import { ratioText } from '../text/factor-text.ts';
import { fewestDecimals } from '../text/place.ts';
import { numberText } from '../text/quantity-text.ts';
import { type PrintTable, steps } from './print-table.ts';

const DIGITS = 4;
/** Tenths up to a decibel, halves up to ten, then what pads, filters and antennas have. */
const DECIBELS = [...steps(0, 1, 0.1), ...steps(1.5, 10, 0.5), 12, 13, 15, 16, 20, 25, 30, 40, 50, 60];

const ratio = (value: number): string => ratioText('shown', { ratio: value, digits: DIGITS });

/** Decibels against ratios of powers and of voltages, up and down. */
export const ratioTable = (): PrintTable => ({
  id: 'decibels',
  title: 'Decibels as ratios',
  words:
    'So many decibels more multiply a power by the second column and a voltage across the same resistance by the fourth; so many less multiply by the third and the fifth.',
  source: 'ITU-R V.574-5: 10 lg of a ratio of powers, 20 lg of a ratio of voltages.',
  checks: 'decibels',
  columns: [
    { what: 'Decibels', unit: 'dB' },
    { what: 'Power, more' },
    { what: 'Power, less' },
    { what: 'Voltage, more' },
    { what: 'Voltage, less' },
  ],
  rows: DECIBELS.map((db) => [
    numberText('shown', { value: db, decimals: fewestDecimals(db, 1) }),
    ratio(dbToPowerRatio(gainDb(db))),
    ratio(dbToPowerRatio(gainDb(-db))),
    ratio(dbToAmplitudeRatio(gainDb(db))),
    ratio(dbToAmplitudeRatio(gainDb(-db))),
  ]),
});
