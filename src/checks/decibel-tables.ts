import {
  dbToAmplitudeRatio,
  dbToPowerRatio,
  gainDb,
  levelDbm,
  levelToPower,
  ohms,
  peakOfPower,
  peakToPeakOfPower,
  voltsOfPower,
} from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

const RATIOS = `
0.1 1.012 1.023
0.5 1.059 1.122
1 1.122 1.259
2 1.259 1.585
3 1.413 1.995
5 1.778 3.162
6 1.995 3.981
7 2.239 5.012
8 2.515 6.310
10 3.162 10.0
20 10.0 100.0`;

function ratios(): Check[] {
  return checksOfTable({
    id: 'db-ratio',
    heading: 'Decibels as ratios',
    clause: 'dB table',
    status: 'published',
    columns: [
      { what: 'voltage ratio', unit: '' },
      { what: 'power ratio', unit: '' },
    ],
    rows: printedRows(RATIOS),
    row: (db) => `${db} dB`,
    title: (db) => `${db} dB is the printed ratio of voltages and of powers`,
    compute: (db, column) => [dbToAmplitudeRatio, dbToPowerRatio][column]?.(gainDb(Number(db))) ?? 0,
    differs: {
      '8/0': {
        exact: '2.512',
        because: 'A misprint handed down from table to table: 10^(8/20) is 2.5119, so that 2.512 is meant.',
        slip: true,
      },
    },
  });
}

/** A level in 50 ohm as power in watts and as the three voltages of a sine. */
function inFiftyOhm(level: string): readonly number[] {
  const power = levelToPower(levelDbm(Number(level)));
  const into = { power, resistance: ohms(50) };
  return [power, voltsOfPower(into), peakOfPower(into), peakToPeakOfPower(into)];
}

const MILLIVOLTS = `
-20 22.4 31.6 63.2
-10 70.7 100.0 200.0
-6 112.1 158.5 317.0
-3 158.3 223.9 447.7
0 223.6 316.2 632.5`;
const VOLTS = `
3 0.32 0.45 0.89
10 0.71 1.00 2.00
13 1.00 1.41 2.83
20 2.24 3.16 6.32`;
const EXACT = `
-20 0.00001 0.0223607 0.0316228 0.0632456
-10 0.0001 0.0707107 0.1 0.2
-6 0.000251189 0.112069 0.158489 0.316979
-3 0.000501187 0.158301 0.223872 0.447744
0 0.001 0.223607 0.316228 0.632456
3 0.00199526 0.315853 0.446684 0.893367
6 0.00398107 0.446154 0.630957 1.26191
10 0.01 0.707107 1.0 2.0
13 0.0199526 0.998815 1.41254 2.82508
20 0.1 2.23607 3.16228 6.32456
30 1.0 7.07107 10.0 20.0
37 5.01187 15.8301 22.3872 44.7744
40 10.0 22.3607 31.6228 63.2456
50 100.0 70.7107 100.0 200.0`;

const voltageColumns = (unit: string) =>
  ['RMS', 'peak', 'peak to peak'].map((what) => ({ what: `${what}, ${unit}`, unit }));

const row = (level: string) => `${level.replace('-', '−')} dBm`;

function printedVolts(): Check[] {
  const common = { clause: 'dBm table', status: 'published', row } as const;
  const title = (level: string) => `${level} dBm in 50 Ω is the printed RMS, peak and peak-to-peak voltage`;
  return [
    ...checksOfTable({
      ...common,
      id: 'dbm-50-ohm-mv',
      heading: 'Levels in 50 Ω as voltages of a sine, in millivolts',
      columns: voltageColumns('mV'),
      rows: printedRows(MILLIVOLTS),
      title,
      compute: (level, column) => 1000 * (inFiftyOhm(level)[column + 1] ?? 0),
    }),
    ...checksOfTable({
      ...common,
      id: 'dbm-50-ohm-v',
      heading: 'Levels in 50 Ω as voltages of a sine, in volts',
      columns: voltageColumns('V'),
      rows: printedRows(VOLTS),
      title,
      compute: (level, column) => inFiftyOhm(level)[column + 1] ?? 0,
    }),
  ];
}

function exactVolts(): Check[] {
  return checksOfTable({
    id: 'dbm-50-ohm-exact',
    heading: 'The same, worked out to six digits',
    clause: 'P = V²/R',
    status: 'recomputed',
    columns: [{ what: 'power, W', unit: 'W' }, ...voltageColumns('V')],
    rows: printedRows(EXACT),
    row,
    title: (level) => `${level} dBm in 50 Ω comes to the exact power and voltages to six digits`,
    compute: (level, column) => inFiftyOhm(level)[column] ?? 0,
  });
}

/** The tables that hang on every workshop wall: decibels as ratios, dBm as volts. */
export function decibelTables(): CheckSource[] {
  return [
    {
      id: 'db-ratio',
      name: 'Decibels as ratios',
      citation: 'Table of decibels as it is common in handbooks of radio',
      checks: ratios(),
    },
    {
      id: 'dbm-50-ohm',
      name: 'dBm in 50 Ω',
      citation: 'Table of dBm and volts from a university course on radio-frequency measurement',
      checks: [...printedVolts(), ...exactVolts()],
    },
  ];
}
