import { normalQuantile, normalShareBelow } from '#compute';
import type { CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

/** Risk of a false accept for a result at the acceptance limit, for k = 2 and one limit, in percent. */
const riskPercent = (guardOverU: string): number => 100 * normalShareBelow(-2 * Number(guardOverU));

const bounds = '3 <0.0001\n1.5 <0.16\n1 <2.5\n0.83 <5';
const exact = '1.5 0.134990\n1 2.275013\n0.83 4.845723\n0 50';

/** ILAC-G8: how much risk a guard band leaves. */
export function ilacG8(): CheckSource {
  const common = {
    clause: 'Table 1',
    columns: [{ what: 'risk of a false accept', unit: '%' }],
    row: (guard: string) => `w = ${guard} U`,
    compute: riskPercent,
  } as const;
  return {
    id: 'ilac-g8',
    name: 'ILAC-G8:09/2019',
    citation: 'ILAC-G8:09/2019, Guidelines on Decision Rules and Statements of Conformity',
    checks: [
      ...checksOfTable({
        ...common,
        id: 'ilac-g8-bound',
        heading: 'Table 1: risk that a guard band leaves, as bounds',
        status: 'published',
        rows: printedRows(bounds),
        title: (guard) =>
          `a guard band of ${guard} U keeps the risk of a false accept below the printed bound`,
      }),
      ...checksOfTable({
        ...common,
        id: 'ilac-g8-exact',
        heading: 'The same risks, worked out',
        status: 'recomputed',
        rows: printedRows(exact),
        title: (guard) => `a guard band of ${guard} U leaves the exact risk of a false accept`,
      }),
      {
        id: 'ilac-g8-five-percent',
        clause: 'Table 1',
        title: 'the guard band for a risk of 5 % is 0.82 U; the table rounds it up to be on the safe side',
        status: 'recomputed',
        figures: [{ what: 'w/U', printed: '0.82242681', unit: '', compute: () => -normalQuantile(0.05) / 2 }],
        note: 'The multipliers of the table were seen in a quotation of it. Without a guard band (w = 0) the risk at the limit is a half.',
      },
    ],
  };
}
