import { expansionUm, lengthAtReference, REFERENCE_CELSIUS } from '#compute';
import type { Check, CheckSource } from './check.ts';
import { checksOfTable } from './family.ts';
import { printedRows } from './rows.ts';

/** Linear coefficients of expansion about 20 degrees, per kelvin. */
const COEFFICIENTS: Readonly<Record<string, number>> = {
  steel: 11.5e-6,
  aluminium: 23.1e-6,
  brass: 19e-6,
  invar: 1.2e-6,
};

/** Expansion of 100 mm of a material by so many kelvin, in micrometres. */
const expansion = (material: string, kelvin: number): number =>
  expansionUm({
    lengthMm: 100,
    expansionPerK: COEFFICIENTS[material] ?? Number.NaN,
    temperatureC: REFERENCE_CELSIUS + kelvin,
  });

const KELVIN = [1, 3, 5] as const;

const table = (): Check[] =>
  checksOfTable({
    id: 'expansion',
    heading: 'How much 100 mm grow',
    clause: 'L α ΔT',
    status: 'recomputed',
    columns: KELVIN.map((kelvin) => ({ what: `${kelvin} K`, unit: 'µm' })),
    rows: printedRows(
      'steel 1.150 3.450 5.750\naluminium 2.310 6.930 11.550\nbrass · 5.700 ·\ninvar · 0.360 ·',
    ),
    row: (material) => material,
    title: (material) => `100 mm of ${material} grow by the exact amounts`,
    compute: (material, column) => expansion(material, KELVIN[column] ?? Number.NaN),
  });

const difference = (): Check => ({
  id: 'expansion-difference',
  clause: 'L Δα ΔT',
  title: 'a part of aluminium measured against steel is wrong by the difference of their growth',
  status: 'recomputed',
  given: '100 mm, both 3 K warm',
  figures: [
    {
      what: 'difference',
      printed: '3.480',
      unit: 'µm',
      compute: () => expansion('aluminium', 3) - expansion('steel', 3),
    },
  ],
});

const bar = { lengthMm: 500.035, expansionPerK: 11.7e-6, temperatureC: 23.7 } as const;

const npl = (): Check[] => [
  {
    id: 'npl-bar',
    clause: 'worked example',
    title: 'a steel bar measured warm has the printed length at 20 °C',
    status: 'published',
    given: '500.035 mm at 23.7 °C, α = 11.7 × 10⁻⁶/K',
    figures: [
      { what: 'length at 20 °C', printed: '500.013', unit: 'mm', compute: () => lengthAtReference(bar) },
    ],
  },
  {
    id: 'npl-bar-exact',
    clause: 'worked example',
    title: 'dividing by the growth and taking it off differ by a nanometre only',
    status: 'recomputed',
    figures: [
      { what: 'by division', printed: '500.013354', unit: 'mm', compute: () => lengthAtReference(bar) },
      {
        what: 'by taking off',
        printed: '500.013353',
        unit: 'mm',
        compute: () => bar.lengthMm - expansionUm(bar) / 1000,
      },
    ],
  },
];

/** Thermal expansion. */
export function thermalExpansion(): CheckSource[] {
  return [
    {
      id: 'expansion',
      name: 'Thermal expansion',
      citation:
        'Coefficients from Swyt 1994, J. Res. NIST 99, 31, and handbook tables (11.5, 23.1, 19 and 1.2 × 10⁻⁶/K)',
      checks: [...table(), difference()],
    },
    {
      id: 'npl',
      name: 'A bar of steel',
      citation: 'National Physical Laboratory, frequently asked questions on length',
      checks: npl(),
    },
  ];
}
