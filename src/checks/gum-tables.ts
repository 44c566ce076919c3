import { logGamma, normalQuantile, normalShareBelow, rectangular, studentQuantile } from '#compute';
import type { Check } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

/** The exact share that each column of table G.2 stands for: 68.27, 95.45 and 99.73 % are one, two and three sigma. */
const g2Columns = () => [
  { what: '68.27 %', unit: '', share: normalShareBelow(1) },
  { what: '90 %', unit: '', share: 0.95 },
  { what: '95 %', unit: '', share: 0.975 },
  { what: '95.45 %', unit: '', share: normalShareBelow(2) },
  { what: '99 %', unit: '', share: 0.995 },
  { what: '99.73 %', unit: '', share: normalShareBelow(3) },
];

/** Table G.2 as printed: degrees of freedom, then t for the six coverage probabilities. */
const G2_PRINTED = `
1 1.84 6.31 12.71 13.97 63.66 235.80
2 1.32 2.92 4.30 4.53 9.92 19.21
3 1.20 2.35 3.18 3.31 5.84 9.22
4 1.14 2.13 2.78 2.87 4.60 6.62
5 1.11 2.02 2.57 2.65 4.03 5.51
6 1.09 1.94 2.45 2.52 3.71 4.90
7 1.08 1.89 2.36 2.43 3.50 4.53
8 1.07 1.86 2.31 2.37 3.36 4.28
9 1.06 1.83 2.26 2.32 3.25 4.09
10 1.05 1.81 2.23 2.28 3.17 3.96
11 1.05 1.80 2.20 2.25 3.11 3.85
12 1.04 1.78 2.18 2.23 3.05 3.76
13 1.04 1.77 2.16 2.21 3.01 3.69
14 1.04 1.76 2.14 2.20 2.98 3.64
15 1.03 1.75 2.13 2.18 2.95 3.59
16 1.03 1.75 2.12 2.17 2.92 3.54
17 1.03 1.74 2.11 2.16 2.90 3.51
18 1.03 1.73 2.10 2.15 2.88 3.48
19 1.03 1.73 2.09 2.14 2.86 3.45
20 1.03 1.72 2.09 2.13 2.85 3.42
25 1.02 1.71 2.06 2.11 2.79 3.33
30 1.02 1.70 2.04 2.09 2.75 3.27
35 1.01 1.70 2.03 2.07 2.72 3.23
40 1.01 1.68 2.02 2.06 2.70 3.20
45 1.01 1.68 2.01 2.06 2.69 3.18
50 1.01 1.68 2.01 2.05 2.68 3.16
100 1.005 1.660 1.984 2.025 2.626 3.077
∞ 1.000 1.645 1.960 2.000 2.576 3.000`;

const degreesOf = (row: string): number => (row === '∞' ? Number.POSITIVE_INFINITY : Number(row));

/** GUM table G.2: coverage factors from Student's t. */
export function tableG2(): Check[] {
  const columns = g2Columns();
  return checksOfTable({
    id: 'gum-g2',
    heading: 'Table G.2: Student’s t for a coverage probability',
    clause: 'Table G.2',
    status: 'published',
    columns,
    rows: printedRows(G2_PRINTED),
    row: (degrees) => degrees,
    title: (degrees) => `Student’s t for ${degrees} degrees of freedom gives the printed coverage factors`,
    compute: (degrees, i) =>
      studentQuantile({ share: columns[i]?.share ?? 0, degreesOfFreedom: degreesOf(degrees) }),
    differs: {
      '35/1': {
        exact: '1.6896',
        because:
          'The one wrong entry of 168: between 1.70 for 30 degrees and 1.68 for 40 it should read 1.69. A fault of the print, too small to matter for a budget.',
        slip: true,
      },
    },
  });
}

/** GUM table G.1 and the text beside it: coverage factors of the normal and of the rectangular distribution. */
export function tableG1(): Check[] {
  const share = (percent: string) => (1 + Number(percent) / 100) / 2;
  const unitRectangle = () => rectangular({ lower: -Math.sqrt(3), upper: Math.sqrt(3) });
  const columns = [{ what: 'coverage factor k', unit: '' }];
  const percentRow = (percent: string) => `${percent} %`;
  return [
    ...checksOfTable({
      id: 'gum-g1',
      heading: 'Table G.1: coverage factor of a normal distribution',
      clause: 'Table G.1',
      status: 'published',
      columns,
      rows: printedRows('68.27 1\n90 1.645\n95 1.960\n95.45 2\n99 2.576\n99.73 3'),
      row: percentRow,
      title: (percent) => `a normal distribution needs the printed factor to cover ${percent} %`,
      compute: (percent) => normalQuantile(share(percent)),
    }),
    ...checksOfTable({
      id: 'gum-g-rectangular',
      heading: 'Coverage factor of a rectangular distribution',
      clause: '4.3.7, G.1.3',
      status: 'published',
      columns,
      rows: printedRows('57.74 1\n95 1.65\n99 1.71\n100 1.73'),
      row: percentRow,
      title: (percent) => `a rectangular distribution needs the printed factor to cover ${percent} %`,
      compute: (percent) => unitRectangle().quantile(share(percent)),
    }),
  ];
}

/** E(s)/sigma for n normal observations, c4 of the control charts. */
const meanOfS = (n: number): number =>
  Math.sqrt(2 / (n - 1)) * Math.exp(logGamma(n / 2) - logGamma((n - 1) / 2));

/** GUM table E.1: how uncertain an uncertainty from few observations is itself. */
export function tableE1(): Check[] {
  return checksOfTable({
    id: 'gum-e1',
    heading: 'Table E.1: how uncertain the uncertainty of n observations is',
    clause: 'Table E.1',
    status: 'published',
    columns: [{ what: 'σ(s)/E(s)', unit: '%' }],
    rows: printedRows('2 76\n3 52\n4 42\n5 36\n10 24\n20 16\n30 13\n50 10'),
    row: (n) => `n = ${n}`,
    title: (n) => `the standard deviation of ${n} readings is itself uncertain by the printed percentage`,
    compute: (n) => (100 * Math.sqrt(1 - meanOfS(Number(n)) ** 2)) / meanOfS(Number(n)),
  });
}
