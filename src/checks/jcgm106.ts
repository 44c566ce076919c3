import { evaluate, judge, normalQuantile, type Specification } from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { sortingRisks } from './jcgm106-risk.ts';
import { printedRows } from './rows.ts';
import { known } from './worked.ts';

const table1 = (): Check[] =>
  checksOfTable({
    id: 'jcgm106-table1',
    heading: 'Table 1: distance from a limit for a probability of conformity',
    clause: 'Table 1',
    status: 'published',
    columns: [{ what: 'z', unit: '' }],
    rows: printedRows('0.80 0.84\n0.90 1.28\n0.95 1.64\n0.99 2.33\n0.999 3.09'),
    row: (probability) => `p = ${probability}`,
    title: (probability) => `a probability of conformity of ${probability} needs the printed distance`,
    compute: (probability) => normalQuantile(Number(probability)),
  });

/** A normal result held against a specification, whatever the rule: the judgement carries the probability. */
function judged({
  estimate,
  u,
  specification,
  required = 0.95,
}: {
  estimate: number;
  u: number;
  specification: Specification;
  required?: number;
}) {
  const input = known('y', 0, u);
  const result = evaluate({
    model: { kind: 'sum', constant: estimate, inputs: [input], sensitivities: [1] },
  });
  return judge({
    result,
    specification,
    rule: { kind: 'probability', required },
    decidingInterval: 'propagation',
  });
}

const conformity = (of: Parameters<typeof judged>[0]): number =>
  judged(of).probabilityOfConformity ?? Number.NaN;

const diode = { estimate: -5.47, u: 0.05, specification: { upper: -5.4 } } as const;
const container = { estimate: 509.7, u: 8.6, specification: { lower: 490 } } as const;

/** The figure that holds a value against its limits. */
const tried = (state: string): NonNullable<Check['tried']> => ({
  path: '/learn/measuring/inside-outside-cant-tell/',
  state: `${state}&v=1`,
});

const oneSided = (): Check[] => [
  {
    id: 'jcgm106-zener',
    clause: 'One upper limit',
    title: 'a diode with an upper limit of −5.40 V conforms with the printed probability',
    status: 'published',
    given: 'y = −5.47 V, u = 0.05 V',
    figures: [
      { what: 'probability of conformity', printed: '0.92', unit: '', compute: () => conformity(diode) },
      { what: 'z', printed: '1.40', unit: '', compute: () => normalQuantile(conformity(diode)) },
    ],
    tried: tried('it=d&ru=p'),
  },
  {
    id: 'jcgm106-container',
    clause: 'One lower limit',
    title: 'a container with a lower limit of 490 conforms with the printed probability',
    status: 'published',
    given: 'y = 509.7, u = 8.6',
    figures: [
      { what: 'probability of conformity', printed: '0.99', unit: '', compute: () => conformity(container) },
      { what: 'z', printed: '2.3', unit: '', compute: () => normalQuantile(conformity(container)) },
    ],
    tried: tried('it=c&ru=p'),
  },
  {
    id: 'jcgm106-one-sided-exact',
    clause: 'One-sided limits',
    title: 'both one-sided examples come to the exact probability to five digits and more',
    status: 'recomputed',
    figures: [
      { what: 'diode', printed: '0.919243', unit: '', compute: () => conformity(diode) },
      { what: 'container', printed: '0.98901', unit: '', compute: () => conformity(container) },
    ],
  },
];

/** A tolerance of width 1 measured with capability index 1: U = 1/2, so that u = 1/4. */
const capable = { u: 0.25, specification: { lower: 0, upper: 1 } } as const;

const capability = (): Check[] => [
  {
    id: 'jcgm106-capability',
    clause: 'Capability index',
    title: 'with capability index 1 only a tenth of the tolerance can be accepted at 95 %',
    status: 'published',
    given: 'index = tolerance/(2 U) with k = 2; positions from 0 to 1 across the tolerance',
    figures: [
      {
        what: 'accepted from',
        printed: '0.45',
        unit: '',
        compute: () => judged({ ...capable, estimate: 0.5 }).acceptance?.lower ?? Number.NaN,
      },
      {
        what: 'accepted to',
        printed: '0.55',
        unit: '',
        compute: () => judged({ ...capable, estimate: 0.5 }).acceptance?.upper ?? Number.NaN,
      },
    ],
    tried: tried('ru=p&ex=1.5&re=27'),
  },
  {
    id: 'jcgm106-capability-exact',
    clause: 'Capability index',
    title: 'with capability index 1 the middle of the tolerance conforms with 95.45 % and no more',
    status: 'recomputed',
    figures: [
      {
        what: 'probability in the middle',
        printed: '0.95450',
        unit: '',
        compute: () => conformity({ ...capable, estimate: 0.5 }),
      },
      {
        what: 'accepted from',
        printed: '0.44905',
        unit: '',
        compute: () => judged({ ...capable, estimate: 0.5 }).acceptance?.lower ?? Number.NaN,
      },
    ],
  },
];

/** JCGM 106: conformity with a specification. */
export function jcgm106(): CheckSource {
  return {
    id: 'jcgm106',
    name: 'JCGM 106:2012',
    citation:
      'JCGM 106:2012, Evaluation of measurement data – The role of measurement uncertainty in conformity assessment',
    checks: [...table1(), ...oneSided(), ...capability(), ...sortingRisks()],
  };
}
