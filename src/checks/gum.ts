import type { CheckSource } from './check.ts';
import { divisors } from './divisors.ts';
import { annexG } from './gum-annex-g.ts';
import { clause4 } from './gum-clause4.ts';
import { annexH1 } from './gum-h1.ts';
import { annexH2 } from './gum-h2.ts';
import { annexH3 } from './gum-h3.ts';
import { tableE1, tableG1, tableG2 } from './gum-tables.ts';

const citation =
  'JCGM 100:2008, Evaluation of measurement data – Guide to the expression of uncertainty in measurement';

/** The Guide (GUM), by what its examples try. */
export function gum(): CheckSource[] {
  return [
    {
      id: 'gum-divisors',
      name: 'GUM: from limits to a standard uncertainty',
      citation,
      checks: [...divisors(), ...clause4()],
    },
    {
      id: 'gum-annex-g',
      name: 'GUM: degrees of freedom, coverage and reporting',
      citation,
      checks: annexG(),
    },
    { id: 'gum-h1', name: 'GUM H.1: an end gauge', citation, checks: annexH1() },
    { id: 'gum-h2', name: 'GUM H.2: resistance and reactance at once', citation, checks: annexH2() },
    { id: 'gum-h3', name: 'GUM H.3: a line of corrections', citation, checks: annexH3() },
    {
      id: 'gum-tables',
      name: 'GUM: tables of coverage factors',
      citation,
      checks: [...tableG1(), ...tableG2(), ...tableE1()],
    },
  ];
}
