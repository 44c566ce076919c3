import { levelDbm, levelToPower, ohms, peakOfRms, peakToPeakOfPeak, voltsOfPower } from '#compute';
import { powerText } from '../text/power-text.ts';
import { numberText } from '../text/quantity-text.ts';
import { voltsText } from '../text/volts-text.ts';
import { type PrintTable, steps } from './print-table.ts';

const DIGITS = 3;
/** What a receiver hears in tens, what a bench meets in fives, what leaves a small transmitter in ones. */
const LEVELS = [...steps(-130, -30, 10), ...steps(-25, 10, 5), ...steps(11, 40, 1), 45, 50, 55, 60];

const volts = (value: number): string => voltsText('shown', { voltsV: value, digits: DIGITS });

/** Levels against powers, and against the volts of a sine across a resistance of so many ohms, which must be > 0. */
export function levelTable(resistanceOhm: number): PrintTable {
  const resistance = ohms(resistanceOhm);
  return {
    id: 'levels',
    title: 'Levels as watts and volts',
    words:
      'A level in dBm is a power, whatever the resistance; the volts hold for a sine across the resistance that is chosen, and for no other.',
    source: 'ITU-R V.574-5: 0 dBm is one milliwatt. P = U²/R with U the RMS value follows by mathematics.',
    checks: 'decibels',
    columns: [
      { what: 'Level', unit: 'dBm' },
      { what: 'Power' },
      { what: 'RMS' },
      { what: 'Peak' },
      { what: 'Peak to peak' },
    ],
    rows: LEVELS.map((dbm) => {
      const power = levelToPower(levelDbm(dbm));
      const rms = voltsOfPower({ power, resistance });
      const peak = peakOfRms(rms);
      return [
        numberText('shown', { value: dbm, decimals: 0 }),
        powerText('shown', { powerW: power, digits: DIGITS }),
        volts(rms),
        volts(peak),
        volts(peakToPeakOfPeak(peak)),
      ];
    }),
  };
}
