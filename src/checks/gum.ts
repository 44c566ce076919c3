import type { CheckSource } from './check.ts';
import { divisors } from './divisors.ts';
import { tableE1, tableG1, tableG2 } from './gum-tables.ts';

const citation =
  'JCGM 100:2008, Evaluation of measurement data – Guide to the expression of uncertainty in measurement';

/** The Guide (GUM), by what its examples try. */
export function gum(): CheckSource[] {
  return [
    { id: 'gum-divisors', name: 'GUM: from limits to a standard uncertainty', citation, checks: divisors() },
    {
      id: 'gum-tables',
      name: 'GUM: tables of coverage factors',
      citation,
      checks: [...tableG1(), ...tableG2(), ...tableE1()],
    },
  ];
}
