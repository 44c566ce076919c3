import { normalQuantile, normalShareBelow } from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

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

const oneSided = (): Check[] => [
  {
    id: 'jcgm106-zener',
    clause: 'One upper limit',
    title: 'a diode with an upper limit of −5.40 V conforms with the printed probability',
    status: 'published',
    given: 'y = −5.47 V, u = 0.05 V, upper limit −5.40 V',
    figures: [
      { what: 'z', printed: '1.40', unit: '', compute: () => (-5.4 + 5.47) / 0.05 },
      {
        what: 'probability of conformity',
        printed: '0.92',
        unit: '',
        compute: () => normalShareBelow((-5.4 + 5.47) / 0.05),
      },
    ],
  },
  {
    id: 'jcgm106-container',
    clause: 'One lower limit',
    title: 'a container with a lower limit of 490 conforms with the printed probability',
    status: 'published',
    given: 'y = 509.7, u = 8.6, lower limit 490',
    figures: [
      {
        what: 'probability of conformity',
        printed: '0.99',
        unit: '',
        compute: () => normalShareBelow((509.7 - 490) / 8.6),
      },
    ],
  },
  {
    id: 'jcgm106-one-sided-exact',
    clause: 'One-sided limits',
    title: 'both one-sided examples come to the exact probability to five digits and more',
    status: 'recomputed',
    figures: [
      { what: 'diode', printed: '0.919243', unit: '', compute: () => normalShareBelow(1.4) },
      {
        what: 'container',
        printed: '0.98901',
        unit: '',
        compute: () => normalShareBelow((509.7 - 490) / 8.6),
      },
    ],
  },
];

/** Probability of conformity from the capability index and where in the tolerance the result lies (0 to 1). */
const byCapability = ({ capability, position }: { capability: number; position: number }): number =>
  normalShareBelow(4 * capability * (1 - position)) - normalShareBelow(-4 * capability * position);

const capability = (): Check[] => [
  {
    id: 'jcgm106-capability-middle',
    clause: 'Capability index',
    title: 'a measurement with capability index 1 is 95.45 % sure in the very middle',
    status: 'recomputed',
    given: 'index = tolerance / (2 U), k = 2',
    figures: [
      {
        what: 'probability in the middle',
        printed: '0.95450',
        unit: '',
        compute: () => byCapability({ capability: 1, position: 0.5 }),
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
    checks: [...table1(), ...oneSided(), ...capability()],
  };
}
