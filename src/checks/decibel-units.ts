import {
  dbToNeper,
  gainDb,
  levelDbm,
  levelToDbmv,
  levelToDbuv,
  levelToDbv,
  levelToPower,
  levelToVolts,
  neperToDb,
  ohms,
  powerToLevel,
  powerW,
  voltsOfPower,
  voltsRms,
  voltsToLevel,
} from '#compute';
import type { Check, CheckSource } from './check.ts';

/** How many dB above the level in dBm the same thing is in another unit, at a resistance. */
const offset = (convert: typeof levelToDbv, resistanceOhm: number): number =>
  convert({ level: levelDbm(0), resistance: ohms(resistanceOhm) });

const neper = (): Check[] => [
  {
    id: 'neper-in-db',
    clause: 'neper, decibel',
    title: 'one neper is the printed number of decibels, and one decibel of nepers',
    status: 'published',
    figures: [
      { what: '1 Np', printed: '8.685889638065037', unit: 'dB', compute: () => neperToDb(1) },
      { what: '1 dB', printed: '0.11512925464970228', unit: 'Np', compute: () => dbToNeper(gainDb(1)) },
    ],
  },
  {
    id: 'neper-attenuation',
    clause: 'IEC 60027-3, example in the abstract',
    title: 'an attenuation of 4.6 Np is 40 dB to the digits printed',
    status: 'published',
    figures: [{ what: '4.6 Np', printed: '40', unit: 'dB', compute: () => neperToDb(4.6) }],
    note: 'Exactly 39.955 dB; print rounds to whole decibels.',
  },
];

const references = (): Check[] => [
  {
    id: 'dbu-reference',
    clause: 'dBu',
    title: 'one milliwatt in 600 Ω is the reference voltage of the dBu',
    status: 'published',
    figures: [
      {
        what: 'reference voltage',
        printed: '0.775',
        unit: 'V',
        compute: () => voltsOfPower({ power: powerW(0.001), resistance: ohms(600) }),
      },
    ],
  },
  {
    id: 's9-level',
    clause: 'S9, short wave',
    title: '50 µV in 50 Ω is the level of S9',
    status: 'published',
    figures: [
      {
        what: 'S9',
        printed: '−73.0103',
        unit: 'dBm',
        compute: () => voltsToLevel({ volts: voltsRms(50e-6), resistance: ohms(50) }),
      },
    ],
  },
];

const offsets = (): Check[] => [
  {
    id: 'dbuv-offset',
    clause: 'dBµV',
    title: 'a level in dBµV is the printed number above the one in dBm',
    status: 'published',
    figures: [
      { what: 'at 50 Ω', printed: '106.99', unit: 'dB', compute: () => offset(levelToDbuv, 50) },
      { what: 'at 75 Ω', printed: '108.75', unit: 'dB', compute: () => offset(levelToDbuv, 75) },
    ],
    note: 'Some tables print 106.98, which is cut off and not rounded: exactly 106.9897 at 50 Ω.',
  },
  {
    id: 'dbuv-offset-exact',
    clause: 'dBµV',
    title: 'a level in dBµV is above the one in dBm by the exact offset to ten decimals',
    status: 'recomputed',
    figures: [
      { what: 'at 50 Ω', printed: '106.9897000434', unit: 'dB', compute: () => offset(levelToDbuv, 50) },
      { what: 'at 75 Ω', printed: '108.7506126339', unit: 'dB', compute: () => offset(levelToDbuv, 75) },
    ],
  },
  {
    id: 'dbmv-offset',
    clause: 'dBmV',
    title: 'a level in dBmV is 46.9897 above the one in dBm at 50 Ω',
    status: 'published',
    figures: [{ what: 'at 50 Ω', printed: '46.9897', unit: 'dB', compute: () => offset(levelToDbmv, 50) }],
  },
  {
    id: 'dbmv-dbv-offset',
    clause: 'dBmV, dBV',
    title: 'levels in dBmV at 75 Ω and in dBV at 50 Ω stand off the level in dBm as V² = P R says',
    status: 'recomputed',
    figures: [
      { what: 'dBmV at 75 Ω', printed: '48.7506', unit: 'dB', compute: () => offset(levelToDbmv, 75) },
      { what: 'dBV at 50 Ω', printed: '−13.0103', unit: 'dB', compute: () => offset(levelToDbv, 50) },
    ],
  },
];

const exactSteps = (): Check[] => [
  {
    id: 'three-db-exact',
    clause: '10 lg 2',
    title: 'a factor of two is not 3 dB exactly but 3.0103',
    status: 'recomputed',
    figures: [
      {
        what: 'factor 2',
        printed: '3.010299956639812',
        unit: 'dB',
        compute: () => powerToLevel(powerW(0.002)) - powerToLevel(powerW(0.001)),
        tolerance: { within: 1e-14, because: 'the last bits of a double' },
      },
      {
        what: '3 dB as a ratio of powers',
        printed: '1.9952623149688795',
        unit: '',
        compute: () => levelToPower(levelDbm(3)) / levelToPower(levelDbm(0)),
        tolerance: { within: 1e-14, because: 'the last bits of a double' },
      },
      {
        what: '3 dB as a ratio of voltages',
        printed: '1.4125375446227544',
        unit: '',
        compute: () =>
          levelToVolts({ level: levelDbm(3), resistance: ohms(50) }) /
          levelToVolts({ level: levelDbm(0), resistance: ohms(50) }),
        tolerance: { within: 1e-14, because: 'the last bits of a double' },
      },
    ],
  },
];

/** Decibel, neper and the units of level. */
export function decibelUnits(): CheckSource[] {
  return [
    {
      id: 'neper',
      name: 'Neper and decibel',
      citation: 'IUPAC Gold Book; SI Brochure, 9th edition, chapter 4; IEC 60027-3',
      checks: [...neper(), ...exactSteps()],
    },
    {
      id: 'level-units',
      name: 'Units of level',
      citation: 'Reference values in general use: dBu, dBµV, dBmV, dBV, S units',
      checks: [...references(), ...offsets()],
    },
  ];
}
