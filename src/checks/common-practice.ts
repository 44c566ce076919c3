import {
  addGain,
  dbToPowerRatio,
  gainDb,
  intervalInWatts,
  levelDbm,
  levelToPower,
  powerRatioToDb,
} from '#compute';
import type { Check, CheckSource } from './check.ts';

const milliwatts = (level: number): number => 1000 * levelToPower(levelDbm(level));

/** A level with its limits in dB, as milliwatts. */
const band = ({ level, halfWidthDb }: { level: number; halfWidthDb: number }) =>
  intervalInWatts({
    lower: addGain({ level: levelDbm(level), gain: gainDb(-halfWidthDb) }),
    upper: addGain({ level: levelDbm(level), gain: gainDb(halfWidthDb) }),
  });

const rule = (check: Omit<Check, 'status' | 'clause'>): Check => ({
  ...check,
  clause: 'rule of the trade',
  status: 'common practice',
});

const rules = (): Check[] => [
  rule({
    id: 'practice-23-dbm',
    title: '23 dBm is 200 mW and 22 dBm is 158 mW',
    figures: [
      { what: '23 dBm', printed: '200', unit: 'mW', compute: () => milliwatts(23) },
      { what: '22 dBm', printed: '158', unit: 'mW', compute: () => milliwatts(22) },
    ],
  }),
  rule({
    id: 'practice-one-db-band',
    title: 'a reading of 22.5 dBm good to ±1 dB means 141 to 224 mW',
    figures: [
      {
        what: 'lower end',
        printed: '141',
        unit: 'mW',
        compute: () => 1000 * band({ level: 22.5, halfWidthDb: 1 }).lower,
      },
      {
        what: 'upper end',
        printed: '224',
        unit: 'mW',
        compute: () => 1000 * band({ level: 22.5, halfWidthDb: 1 }).upper,
      },
    ],
    note: 'The reading itself is 178 mW: 37 below it and 46 above. One plus-minus in milliwatts would be wrong on both sides.',
  }),
  rule({
    id: 'practice-ten-db-pad',
    title: 'a 10 dB pad passes a tenth',
    figures: [{ what: 'share passed', printed: '0.1', unit: '', compute: () => dbToPowerRatio(gainDb(-10)) }],
  }),
  rule({
    id: 'practice-halving',
    title: 'halving the power takes 3 dB',
    figures: [{ what: 'half the power', printed: '-3', unit: 'dB', compute: () => powerRatioToDb(0.5) }],
  }),
];

/** Rules that everybody uses and nobody wrote first. */
export function commonPractice(): CheckSource {
  return {
    id: 'common-practice',
    name: 'Rules of the trade',
    citation: 'Common practice among radio amateurs and in laboratories; no document is claimed',
    checks: rules(),
  };
}
