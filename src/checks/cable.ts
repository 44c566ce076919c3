import { cableLossDb } from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

/** Loss of 100 ft in dB at 30 and at 150 MHz, as the handbook has it. */
const LOSSES: Readonly<Record<string, readonly [number, number]>> = {
  'RG-58': [2.47, 5.63],
  'RG-213': [1.08, 2.53],
  'RG-174': [4.56, 10.3],
};

/** 100 m over 100 ft. */
const PER_100_METRES = 100 / 30.48;

/** Loss of 100 ft at a frequency, from the two entries of the table. */
function loss(cable: string, megahertz: number): number {
  const [low, high] = LOSSES[cable] ?? [Number.NaN, Number.NaN];
  return cableLossDb({
    known: [
      { frequencyHz: 30e6, lossDb: low },
      { frequencyHz: 150e6, lossDb: high },
    ],
    frequencyHz: megahertz * 1e6,
  });
}

const METRIC = [30, 150] as const;
const FITTED = [1, 10, 100] as const;

const tables = (): Check[] => [
  ...checksOfTable({
    id: 'cable-metric',
    heading: 'Loss of 100 m, from the table for 100 ft',
    clause: 'cable table',
    status: 'recomputed',
    columns: METRIC.map((megahertz) => ({ what: `${megahertz} MHz`, unit: 'dB' })),
    rows: printedRows('RG-58 8.10 18.47\nRG-213 3.54 8.30\nRG-174 14.96 33.79'),
    row: (cable) => cable,
    title: (cable) => `100 m of ${cable} lose what the table says of 100 ft, times 3.28084`,
    compute: (cable, column) => PER_100_METRES * loss(cable, METRIC[column] ?? Number.NaN),
  }),
  ...checksOfTable({
    id: 'cable-between',
    heading: 'Loss of 100 ft between and beyond the entries',
    clause: 'k₁√f + k₂f',
    status: 'recomputed',
    columns: FITTED.map((megahertz) => ({ what: `${megahertz} MHz`, unit: 'dB' })),
    rows: printedRows('RG-58 0.445 1.417 4.57\nRG-213 0.191 0.613 2.03'),
    row: (cable) => cable,
    title: (cable) => `the loss of ${cable} at other frequencies follows the two terms fitted to the table`,
    compute: (cable, column) => loss(cable, FITTED[column] ?? Number.NaN),
  }),
];

/** Loss of coaxial cable. */
export function cable(): CheckSource {
  return {
    id: 'cable',
    name: 'Coaxial cable',
    citation:
      'Table of cable losses as an amateur antenna handbook gives it; other tables differ by several per cent for the same cable',
    checks: tables(),
  };
}
