import {
  dbToPercentOfPower,
  gainDb,
  percentLimitsToDb,
  percentOfPowerToDb,
  smallPercentToDb,
} from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

const columns = (unit: string) => [
  { what: 'upwards', unit },
  { what: 'downwards', unit },
];

/** The signed value of a `±` row in one of its two columns. */
const signed = (row: string, column: number): number => (column === 0 ? Number(row) : -Number(row));

const tables = (): Check[] => [
  ...checksOfTable({
    id: 'percent-to-db',
    heading: 'A change of power in percent, in decibels',
    clause: '10 lg(1 ± p)',
    status: 'recomputed',
    columns: columns('dB'),
    rows: printedRows('1 0.0432 -0.0436\n5 0.2119 -0.2228\n10 0.4139 -0.4576\n20 0.7918 -0.9691'),
    row: (percent) => `±${percent} %`,
    title: (percent) => `±${percent} % of power is lopsided in decibels by the exact amounts`,
    compute: (percent, column) => percentOfPowerToDb(signed(percent, column)),
  }),
  ...checksOfTable({
    id: 'db-to-percent',
    heading: 'A change in decibels, in percent of power',
    clause: '10^(±dB/10) − 1',
    status: 'recomputed',
    columns: columns('%'),
    rows: printedRows('0.1 2.329 -2.276\n0.5 12.202 -10.875\n1 25.893 -20.567\n3 99.526 -49.881'),
    row: (db) => `±${db} dB`,
    title: (db) => `±${db} dB is lopsided in percent of power by the exact amounts`,
    compute: (db, column) => dbToPercentOfPower(gainDb(signed(db, column))),
  }),
];

const limits = (): Check[] => [
  {
    id: 'percent-small',
    clause: '10/ln 10',
    title: 'one percent of power is 0.04343 dB as long as errors are small',
    status: 'recomputed',
    figures: [
      {
        what: '1 % of power, linearised',
        printed: '0.04342944819',
        unit: 'dB',
        compute: () => smallPercentToDb({ percent: 1, quantity: 'power' }),
      },
    ],
  },
  {
    id: 'percent-of-what',
    clause: '20 lg(1 ± p), −20 lg(1 ∓ p)',
    title: '3 % of volts is one band of the reading and another of the true value',
    status: 'recomputed',
    figures: (
      [
        ['of the reading, up', '0.257', 'reading', 'upper'],
        ['of the reading, down', '-0.265', 'reading', 'lower'],
        ['of the true value, up', '0.265', 'trueValue', 'upper'],
        ['of the true value, down', '-0.257', 'trueValue', 'lower'],
      ] as const
    ).map(([what, printed, of, end]) => ({
      what,
      printed,
      unit: 'dB',
      compute: () => percentLimitsToDb({ percent: 3, quantity: 'volts', of })[end],
    })),
  },
];

/** Percent and decibels, both ways. */
export function percentTables(): CheckSource[] {
  return [
    {
      id: 'percent',
      name: 'Percent and decibels',
      citation: 'Worked out from the definition of the decibel',
      checks: [...tables(), ...limits()],
    },
  ];
}
