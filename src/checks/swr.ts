import {
  mismatchLossDb,
  reflectionOfReturnLoss,
  reflectionOfSwr,
  returnLossOfReflection,
  swrOfReflection,
} from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';
import { SWR_EXACT, SWR_PRINTED } from './swr-rows.ts';

const RETURN_LOSS = `
1 17.391 0.891
3 5.848 0.708
6 3.010 0.501
9 2.100 0.355
10 1.925 0.316
12 1.671 0.251
14 1.499 0.200
15 1.433 0.178
20 1.222 0.100
25 1.119 0.056
26 1.105 0.050
30 1.065 0.032`;

const returnLoss = (): Check[] =>
  checksOfTable({
    id: 'return-loss',
    heading: 'Return loss, standing-wave ratio and reflection',
    clause: 'Return-loss table',
    status: 'published',
    columns: [
      { what: 'SWR', unit: '' },
      { what: 'reflection ρ', unit: '' },
    ],
    rows: printedRows(RETURN_LOSS),
    row: (loss) => `${loss} dB`,
    title: (loss) => `a return loss of ${loss} dB is the printed standing-wave ratio and reflection`,
    compute: (loss, column) => {
      const reflection = reflectionOfReturnLoss(Number(loss));
      return column === 0 ? swrOfReflection(reflection) : reflection;
    },
    differs: {
      '26/0': {
        exact: '1.1055',
        because: 'Cut off where it should be rounded: exactly 1.10554, which rounds to 1.106.',
        slip: true,
      },
    },
  });

/** Reflection, reflected power in percent, return loss and mismatch loss of a standing-wave ratio. */
function fromSwr(swr: string): readonly number[] {
  const reflection = reflectionOfSwr(Number(swr));
  return [reflection, 100 * reflection ** 2, returnLossOfReflection(reflection), mismatchLossDb(reflection)];
}

const columns = [
  { what: 'reflection ρ', unit: '' },
  { what: 'reflected power', unit: '%' },
  { what: 'return loss', unit: 'dB' },
  { what: 'mismatch loss', unit: 'dB' },
];

const cut = 'Cut off where it should be rounded.';
const off = 'One unit off in the last place: no rounding of the exact value gives what is printed.';

const swrTable = (): Check[] => [
  ...checksOfTable({
    id: 'swr-printed',
    heading: 'Standing-wave ratio, as printed',
    clause: 'SWR table',
    status: 'published',
    columns,
    rows: printedRows(SWR_PRINTED),
    row: (swr) => swr,
    title: (swr) => `a standing-wave ratio of ${swr} reflects and costs what is printed`,
    compute: (swr, column) => fromSwr(swr)[column] ?? 0,
    differs: {
      '1.1/2': { exact: '26.4444', because: off, slip: true },
      '1.3/3': { exact: '0.0745', because: off, slip: true },
      '1.4/1': { exact: '2.7778', because: cut, slip: true },
      '1.4/2': { exact: '15.5630', because: off, slip: true },
      '1.6/1': { exact: '5.3254', because: cut, slip: true },
      '2.5/1': { exact: '18.3673', because: cut, slip: true },
      '5.0/1': { exact: '44.4444', because: off, slip: true },
    },
  }),
  ...checksOfTable({
    id: 'swr-exact',
    heading: 'Standing-wave ratio, worked out',
    clause: 'ρ = (s − 1)/(s + 1)',
    status: 'recomputed',
    columns,
    rows: printedRows(SWR_EXACT),
    row: (swr) => swr,
    title: (swr) => `a standing-wave ratio of ${swr} reflects and costs the exact amounts`,
    compute: (swr, column) => fromSwr(swr)[column] ?? 0,
  }),
];

/** Standing-wave ratio and return loss. */
export function swr(): CheckSource[] {
  return [
    {
      id: 'return-loss',
      name: 'Return loss',
      citation: 'Table of return loss as it is common in handbooks of radio',
      checks: returnLoss(),
    },
    {
      id: 'swr',
      name: 'Standing-wave ratio',
      citation: 'Table of the standing-wave ratio as it is common in handbooks of radio',
      checks: swrTable(),
    },
  ];
}
