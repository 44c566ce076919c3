import { mismatchLimits, mismatchLossDb, reflectionOfSwr, returnLossOfReflection } from '#compute';
import { deviationsText } from '../text/deviation-text.ts';
import { fewestDecimals } from '../text/place.ts';
import { numberText } from '../text/quantity-text.ts';
import { type PrintTable, steps } from './print-table.ts';

const SWRS = [
  ...steps(1.02, 1.1, 0.02),
  1.15,
  1.2,
  1.25,
  1.3,
  1.35,
  ...steps(1.4, 2, 0.1),
  2.2,
  2.5,
  3,
  3.5,
  4,
  5,
  6,
  8,
  10,
  20,
];
/** SWRs of sources and loads that meet on a bench. */
const PAIRED = [1.05, 1.1, 1.15, 1.2, 1.3, 1.5, 2, 2.5, 3];

const number = (value: number, decimals: number): string => numberText('shown', { value, decimals });
const swrText = (swr: number): string => number(swr, Math.max(1, fewestDecimals(swr, 2)));

/** Standing wave ratio against all else that says how much comes back. */
export const swrTable = (): PrintTable => ({
  id: 'swr',
  title: 'Standing wave ratio, reflection and return loss',
  words:
    'What the standing wave ratio at a plane says about that plane: what part of the voltage and of the power comes back, and what is missing behind it. What comes back is not all lost.',
  source: 'Follows by mathematics from the reflection coefficient, (SWR − 1)/(SWR + 1).',
  checks: 'reflections',
  columns: [
    { what: 'SWR' },
    { what: 'Reflection coefficient' },
    { what: 'Return loss', unit: 'dB' },
    { what: 'Power that comes back', unit: '%' },
    { what: 'Mismatch loss', unit: 'dB' },
  ],
  rows: SWRS.map((swr) => {
    const reflection = reflectionOfSwr(swr);
    return [
      swrText(swr),
      number(reflection, 4),
      number(returnLossOfReflection(reflection), 2),
      number(100 * reflection ** 2, 2),
      number(mismatchLossDb(reflection), 3),
    ];
  }),
});

function limitsText(one: number, other: number): string {
  const { lower, upper } = mismatchLimits({ source: reflectionOfSwr(one), load: reflectionOfSwr(other) });
  return deviationsText('shown', { upper, lower, decimals: 2, unit: 'none' });
}

/** Limits of the mismatch uncertainty of two standing wave ratios. */
export const mismatchTable = (): PrintTable => ({
  id: 'mismatch',
  title: 'Limits of mismatch for two standing wave ratios',
  words:
    'In dB. Source and load reflect, nobody knows with which phase: the power that an ideal load would take lies within these limits of what comes to the real one, most often near an end of them. What the real one sends back of it comes on top: the mismatch loss of its own ratio. Rows and columns may be exchanged.',
  source: 'Follows by mathematics: 20 lg(1 ± ρ₁ρ₂), the two ends of a phase that nobody knows.',
  checks: 'reflections',
  columns: [{ what: 'SWR' }, ...PAIRED.map((swr) => ({ what: swrText(swr) }))],
  rows: PAIRED.map((one) => [swrText(one), ...PAIRED.map((other) => limitsText(one, other))]),
});
