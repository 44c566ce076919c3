import {
  dbToPercentOfPower,
  dbToPercentOfVolts,
  gainDb,
  percentOfPowerToDb,
  percentOfVoltsToDb,
} from '#compute';
import { fewestDecimals } from '../text/place.ts';
import { changeText, numberText } from '../text/quantity-text.ts';
import { type PrintTable, steps } from './print-table.ts';

const DECIBELS = [0.01, 0.02, 0.05, ...steps(0.1, 1, 0.1), 1.2, 1.5, 2, 2.5, 3];
const PERCENTS = [0.1, 0.2, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50];

const given = (value: number): string => numberText('shown', { value, decimals: fewestDecimals(value, 2) });
const percent = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'none' });
const decibels = (value: number): string => changeText('shown', { value, decimals: 3, unit: 'none' });

/** Decibels up and down in percent of power and of volts. */
export const toPercentTable = (): PrintTable => ({
  id: 'to-percent',
  title: 'Decibels in percent',
  words:
    'What is even in decibels is lopsided in percent: up is more than down. Of small figures one dB is near 23 % of power and 12 % of volts, and no more than near.',
  source: 'Follows by mathematics from the decibel (ITU-R V.574-5).',
  checks: 'decibels',
  columns: [
    { what: 'Decibels', unit: 'dB' },
    { what: 'Power, up', unit: '%' },
    { what: 'Power, down', unit: '%' },
    { what: 'Volts, up', unit: '%' },
    { what: 'Volts, down', unit: '%' },
  ],
  rows: DECIBELS.map((db) => [
    `±${given(db)}`,
    percent(dbToPercentOfPower(gainDb(db))),
    percent(dbToPercentOfPower(gainDb(-db))),
    percent(dbToPercentOfVolts(gainDb(db))),
    percent(dbToPercentOfVolts(gainDb(-db))),
  ]),
});

/** Percent of power and of volts, up and down, in decibels. */
export const fromPercentTable = (): PrintTable => ({
  id: 'from-percent',
  title: 'Percent in decibels',
  words: 'What is even in percent is lopsided in decibels, the other way round: down is more than up.',
  source: 'Follows by mathematics from the decibel (ITU-R V.574-5).',
  checks: 'decibels',
  columns: [
    { what: 'Percent', unit: '%' },
    { what: 'Power, up', unit: 'dB' },
    { what: 'Power, down', unit: 'dB' },
    { what: 'Volts, up', unit: 'dB' },
    { what: 'Volts, down', unit: 'dB' },
  ],
  rows: PERCENTS.map((value) => [
    `±${given(value)}`,
    decibels(percentOfPowerToDb(value)),
    decibels(percentOfPowerToDb(-value)),
    decibels(percentOfVoltsToDb(value)),
    decibels(percentOfVoltsToDb(-value)),
  ]),
});
