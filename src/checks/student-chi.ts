import { chiSquareQuantile, studentQuantile } from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

const degreesOf = (row: string): number => (row === '∞' ? Number.POSITIVE_INFINITY : Number(row));

const T_SHARES = [0.9, 0.95, 0.975, 0.99, 0.995, 0.999] as const;
const T_PRINTED = `
9 1.383 1.833 2.262 2.821 3.250 4.296
19 1.328 1.729 2.093 2.539 2.861 3.579
∞ 1.282 1.645 1.960 2.326 2.576 3.090`;
const T_EXACT = `
1 3.0777 6.3138 12.7062 31.8205 63.6567 318.3088
2 1.8856 2.9200 4.3027 6.9646 9.9248 22.3271
3 1.6377 2.3534 3.1824 4.5407 5.8409 10.2145
5 1.4759 2.0150 2.5706 3.3649 4.0321 5.8934
9 1.3830 1.8331 2.2622 2.8214 3.2498 4.2968
10 1.3722 1.8125 2.2281 2.7638 3.1693 4.1437
19 1.3277 1.7291 2.0930 2.5395 2.8609 3.5794
20 1.3253 1.7247 2.0860 2.5280 2.8453 3.5518
30 1.3104 1.6973 2.0423 2.4573 2.7500 3.3852
100 1.2901 1.6602 1.9840 2.3642 2.6259 3.1737`;

const shareColumns = (shares: readonly number[]) => shares.map((share) => ({ what: `${share}`, unit: '' }));

function student(): Check[] {
  const common = {
    columns: shareColumns(T_SHARES),
    row: (degrees: string) => degrees,
    compute: (degrees: string, column: number) =>
      studentQuantile({ share: T_SHARES[column] ?? 0, degreesOfFreedom: degreesOf(degrees) }),
  } as const;
  return [
    ...checksOfTable({
      ...common,
      id: 't-printed',
      heading: 'Student’s t with a share below it, as printed',
      clause: '1.3.6.7.2',
      status: 'published',
      rows: printedRows(T_PRINTED),
      title: (degrees) => `t of ${degrees} degrees of freedom has the printed quantiles`,
      differs: {
        '9/5': {
          exact: '4.2968',
          because:
            'The last column of the printed table is off in the third decimal for several rows, this one among them: 4.2968 rounds to 4.297.',
          slip: true,
        },
      },
    }),
    ...checksOfTable({
      ...common,
      id: 't-exact',
      heading: 'Student’s t with a share below it, worked out',
      clause: 'quantiles of t',
      status: 'recomputed',
      rows: printedRows(T_EXACT),
      title: (degrees) => `t of ${degrees} degrees of freedom has the exact quantiles to four decimals`,
    }),
  ];
}

const CHI_SHARES = [0.001, 0.01, 0.025, 0.05, 0.1, 0.9, 0.95, 0.975, 0.99] as const;
const CHI_UPPER = `
1 · · · · · · 3.84146 · 6.63490
2 · · · · · · 5.99146 · ·
5 · · · · · · 11.07050 · ·
10 · · · · · · 18.30704 20.48318 23.20925`;
const CHI_LOWER = `
10 1.479 2.558 3.247 3.940 4.865
20 · 8.260 9.591 10.851 12.443
30 · 14.953 16.791 18.493 20.599
100 61.918 70.065 74.222 77.929 82.358`;
const CHI_EXACT = `
1 0.00000 0.00016 0.00098 0.00393 0.01579 2.70554 3.84146 5.02389 6.63490
2 0.00200 0.02010 0.05064 0.10259 0.21072 4.60517 5.99146 7.37776 9.21034
5 0.21021 0.55430 0.83121 1.14548 1.61031 9.23636 11.07050 12.83250 15.08627
10 1.47874 2.55821 3.24697 3.94030 4.86518 15.98718 18.30704 20.48318 23.20925
20 5.92104 8.26040 9.59078 10.85081 12.44261 28.41198 31.41043 34.16961 37.56623
30 11.58795 14.95346 16.79077 18.49266 20.59923 40.25602 43.77297 46.97924 50.89218
100 61.91794 70.06489 74.22193 77.92947 82.35814 118.49800 124.34211 129.56120 135.80672`;

function chiSquare(): Check[] {
  const common = {
    row: (degrees: string) => degrees,
    columns: shareColumns(CHI_SHARES),
    compute: (degrees: string, column: number) =>
      chiSquareQuantile({ share: CHI_SHARES[column] ?? 0, degreesOfFreedom: Number(degrees) }),
  } as const;
  return [
    ...checksOfTable({
      ...common,
      id: 'chi-square-upper',
      heading: 'Chi-square with a share below it, upper values as printed',
      clause: 'chi-square table',
      status: 'published',
      rows: printedRows(CHI_UPPER),
      title: (degrees) => `chi-square of ${degrees} degrees of freedom has the printed upper quantiles`,
    }),
    ...checksOfTable({
      ...common,
      id: 'chi-square-lower',
      heading: 'Chi-square with a share below it, lower values as printed',
      clause: '1.3.6.7.4',
      status: 'published',
      rows: printedRows(CHI_LOWER),
      title: (degrees) => `chi-square of ${degrees} degrees of freedom has the printed lower quantiles`,
    }),
    ...checksOfTable({
      ...common,
      id: 'chi-square-exact',
      heading: 'Chi-square with a share below it, worked out',
      clause: 'quantiles of chi-square',
      status: 'recomputed',
      rows: printedRows(CHI_EXACT),
      title: (degrees) =>
        `chi-square of ${degrees} degrees of freedom has the exact quantiles to five decimals`,
    }),
  ];
}

/** Quantiles of Student's t and of chi-square. */
export function studentAndChiSquare(): CheckSource[] {
  const citation = 'NIST/SEMATECH e-Handbook of Statistical Methods, tables of critical values';
  return [
    { id: 't-quantiles', name: 'Student’s t', citation, checks: student() },
    {
      id: 'chi-square',
      name: 'Chi-square',
      citation: `${citation}, and standard tables to five decimals`,
      checks: chiSquare(),
    },
  ];
}
